import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app/App.tsx';

const place = document.getElementById('root');
if (place === null) throw new Error('index.html has no #root');
createRoot(place).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
