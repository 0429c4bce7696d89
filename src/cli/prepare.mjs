import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Folder of the project. */
export const root = fileURLToPath(new URL('../../', import.meta.url));

/** Everything a build depends on. */
const buildInputs = ['src', 'public', 'index.html', 'vite.config.ts', 'tsconfig.json', 'package-lock.json'];

/**
 * Newest change at or below a path; folders count too, so that a deleted file shows. 0 for what is not there.
 * @param {string} path
 * @returns {number}
 */
function newest_ms(path) {
  if (!existsSync(path)) return 0;
  const status = statSync(path);
  const inside = status.isDirectory() ? readdirSync(path) : [];
  return inside.reduce((latest, name) => Math.max(latest, newest_ms(join(path, name))), status.mtimeMs);
}

/**
 * Whether `made`, a file written last by its maker, is missing or older than one of its inputs.
 * @param {string} made
 * @param {readonly string[]} inputs
 */
export function isStale(made, inputs) {
  const from_ms = newest_ms(join(root, made));
  return inputs.some((input) => newest_ms(join(root, input)) > from_ms);
}

/**
 * Runs a program in the project folder; its output goes to the terminal's error stream, so that ours stays clean.
 * @param {string} program
 * @param {readonly string[]} args
 * @param {NodeJS.ProcessEnv} env
 * @returns {boolean}
 */
function run(program, args, env) {
  const isScript = program === 'npm' && process.platform === 'win32';
  const { status } = spawnSync(program, args, { cwd: root, env, stdio: ['ignore', 2, 2], shell: isScript });
  return status === 0;
}

/** Installs the packages of the lock file if they are missing or older than it. */
export function ensureInstalled() {
  if (!isStale('node_modules/.package-lock.json', ['package-lock.json'])) return true;
  console.error('Installing packages (once)…');
  const args = ['ci', '--include=dev', '--loglevel=error', '--no-audit', '--no-fund'];
  if (run('npm', args, process.env)) return true;
  console.error('The packages could not be installed: npm ci failed. Is the network reachable?');
  return false;
}

/** Builds the app into dist/ if it is missing or older than its sources. */
export function ensureBuilt() {
  if (!isStale('dist/index.html', buildInputs)) return true;
  console.error('Building…');
  return build();
}

/** Builds the app into dist/, as for the user, whatever the surroundings call themselves. */
export function build() {
  const env = { ...process.env, NODE_ENV: 'production', VITEST: '' };
  const vite = join(root, 'node_modules/vite/bin/vite.js');
  return run(process.execPath, [vite, 'build', '--logLevel', 'warn'], env);
}
