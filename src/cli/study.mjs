import { isNodeNewEnough } from './nodeVersion.mjs';

if (isNodeNewEnough()) {
  import('./launch.mjs').then(({ launch }) => launch('study'));
}
