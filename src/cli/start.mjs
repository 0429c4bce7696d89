import { isNodeNewEnough } from './nodeVersion.mjs';

if (isNodeNewEnough()) {
  import('./serve.mjs').then(({ start }) => start(process.argv.slice(2)));
}
