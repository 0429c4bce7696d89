import { isNodeNewEnough } from '../src/cli/nodeVersion.mjs';

if (isNodeNewEnough()) {
  import('./helpers/suite.mjs').then(({ runSuite }) => runSuite(process.argv.slice(2)));
}
