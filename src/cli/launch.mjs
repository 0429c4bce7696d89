import { pathToFileURL } from 'node:url';
import { bundle } from './bundle.mjs';
import { ensureInstalled } from './prepare.mjs';

/**
 * `npm run solve`: makes the terminal program from solve.ts where that is missing or stale, and becomes it. Exit code
 * and output are the program's own; 3 says that it could not be made.
 */
export async function launch() {
  try {
    if (!ensureInstalled()) throw new Error('packages are missing');
    const program = await bundle('src/cli/solve.ts', 'dist-cli/solve.mjs');
    returnToCaller();
    await import(pathToFileURL(program).href);
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 3;
  }
}

/** npm runs scripts in the project folder; file names are meant from where the user stands. */
function returnToCaller() {
  const { npm_lifecycle_event, INIT_CWD } = process.env;
  if (npm_lifecycle_event === 'solve' && INIT_CWD) process.chdir(INIT_CWD);
}
