import { start } from './app/start.tsx';

const place = document.getElementById('root');
if (place === null) throw new Error('index.html has no #root');
void start(place);
