import { pathToFileURL } from 'node:url';
import { bundle } from './bundle.mjs';
import { ensureInstalled } from './prepare.mjs';

/**
 * `npm run solve`, `npm run study`: makes the terminal program where it is missing or stale, and becomes it. Exit code and
 * output are the program's own; 3 says that it could not be made.
 * @param {'solve' | 'study'} name
 */
export async function launch(name) {
  try {
    if (!ensureInstalled()) throw new Error('packages are missing');
    const program = await bundle(`src/cli/${name}.ts`, `dist-cli/${name}.mjs`);
    returnToCaller(name);
    await import(pathToFileURL(program).href);
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 3;
  }
}

/**
 * npm runs scripts in the project folder; file names are meant from where the user stands.
 * @param {string} name
 */
function returnToCaller(name) {
  const { npm_lifecycle_event, INIT_CWD } = process.env;
  if (npm_lifecycle_event === name && INIT_CWD) process.chdir(INIT_CWD);
}
