import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { build } from 'vite';
import { root } from './prepare.mjs';

const page = 'index.html';
const worker = 'serviceWorker.js';

/** The readme's picture is in no page: no phone has to keep it. */
const notKept = [worker, 'picture.png'];

/** @param {string | Uint8Array} bytes */
const digestOf = (bytes) => createHash('sha256').update(bytes).digest('hex');

/** The release, as people count it. */
function release() {
  /** @type {{ version: string }} */
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  return version;
}

/**
 * Makes a built folder work without network: writes its version into its page, and beside the page the service worker
 * with the list of all files. The version is the release with a digest of the bytes of all files after it, so that the
 * same sources give the same version and any change gives another.
 * @param {string} folder
 * @returns {Promise<string>} the version
 */
export async function makeOffline(folder) {
  const paths = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).replaceAll(sep, '/'))
    .filter((path) => !notKept.includes(path))
    .sort();
  const withVersion = (/** @type {string} */ version) =>
    readFileSync(join(folder, page), 'utf8').replace(
      /(<meta name="version" content=")[^"]*/,
      (_, before) => before + version,
    );
  const bytesOf = (/** @type {string} */ path) =>
    path === page ? withVersion('') : readFileSync(join(folder, path));
  const all = digestOf(paths.map((path) => `${path} ${digestOf(bytesOf(path))}`).join('\n'));
  const version = `${release()}+${all.slice(0, 8)}`;
  writeFileSync(join(folder, page), withVersion(version));
  const files = paths.map((path) => ({
    path: path === page ? '' : path,
    sha256: digestOf(readFileSync(join(folder, path))),
  }));
  writeFileSync(join(folder, worker), await bundleWorker({ version, files }));
  return version;
}

/**
 * @param {import('../workers/offline/store.ts').Build} made
 * @returns {Promise<string>} one classic script, as every browser takes it
 */
async function bundleWorker(made) {
  const result = await build({
    root,
    configFile: false,
    logLevel: 'error',
    publicDir: false,
    define: { BUILD: JSON.stringify(made) },
    build: {
      write: false,
      target: 'es2022',
      rolldownOptions: {
        input: 'src/workers/offline/serviceWorker.ts',
        output: { format: 'iife', comments: false },
      },
    },
  });
  const [chunk] = 'output' in result ? result.output : [];
  if (chunk?.type !== 'chunk') throw new Error('the service worker gave no bundle');
  return chunk.code;
}

/**
 * For the build: what has to be known of all files comes after all of them are written.
 * @returns {import('vite').Plugin}
 */
export function offlineBuild() {
  return {
    name: 'offline-build',
    apply: 'build',
    transformIndexHtml: () => [{ tag: 'meta', attrs: { name: 'version', content: '' }, injectTo: 'head' }],
    writeBundle: async ({ dir }) => {
      if (dir !== undefined) await makeOffline(dir);
    },
  };
}
