import {
  cpSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { makeOffline } from '../../src/cli/offlineBuild.mjs';

const dist = fileURLToPath(new URL('../../dist/', import.meta.url));

const types: Readonly<Record<string, string>> = {
  '.css': 'text/css',
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain',
  '.webmanifest': 'application/manifest+json',
};

type Trouble = 'lacks' | 'breaks off' | 'gives its page';

/** One version of the app in a folder of its own. */
export interface Edition {
  readonly folder: string;
  readonly version: string;
}

/**
 * A server that can be shut and opened again at its address, that changes over from one version to another, and that
 * can break off in the middle of a file. For what it lacks it gives the page, as many servers do.
 */
export async function serveVersions() {
  const editions: string[] = [];
  let folder = dist;
  let trouble: { readonly path: RegExp; readonly kind: Trouble } | null = null;

  const listen = (port: number) =>
    new Promise<Server>((resolve) => {
      const opened = createServer(({ url = '/' }, response) => {
        const path = new URL(url, 'http://localhost').pathname.slice(1);
        const wrong = trouble?.path.test(path) ? trouble.kind : null;
        if (wrong === 'lacks') {
          response.writeHead(404).end();
          return;
        }
        const known = extname(path) !== '' && existsSync(join(folder, path)) && wrong !== 'gives its page';
        const bytes = readFileSync(join(folder, known ? path : 'index.html'));
        response.writeHead(200, {
          'Content-Type': types[known ? extname(path) : '.html'],
          'Content-Length': bytes.length,
          'Cache-Control': 'no-cache',
          Vary: 'Origin',
        });
        if (wrong === null || wrong === 'gives its page') response.end(bytes);
        else response.write(bytes.subarray(0, bytes.length >> 1), () => response.destroy());
      }).listen(port, '127.0.0.1', () => resolve(opened));
    });
  let server: Server | null = await listen(0);
  const { port } = server.address() as AddressInfo;

  const close = () =>
    new Promise<void>((resolve) => {
      server?.closeAllConnections();
      if (server === null) resolve();
      else server.close(() => resolve());
      server = null;
    });
  return {
    address: `http://127.0.0.1:${port}/`,
    close,
    reopen: async () => {
      server ??= await listen(port);
    },
    serve: (edition: Edition) => {
      folder = edition.folder;
    },
    /** What goes wrong with files whose path matches. */
    fail: (path: RegExp, kind: Trouble) => {
      trouble = { path, kind };
    },
    wellAgain: () => {
      trouble = null;
    },
    /** The app as it was built, under another version: another name for one of the parts that load later. */
    edition: async (mark: string): Promise<Edition> => {
      const made = mkdtempSync(join(tmpdir(), 'edition-'));
      editions.push(made);
      cpSync(dist, made, { recursive: true });
      renameLatePart(made, mark);
      return { folder: made, version: await makeOffline(made) };
    },
    remove: async () => {
      await close();
      for (const made of editions) rmSync(made, { recursive: true });
    },
  };
}

/** As a change in a part would: its name changes, and so does the text of all that load it. */
function renameLatePart(folder: string, mark: string): void {
  const assets = join(folder, 'assets');
  const names = readdirSync(assets);
  const old = names.find((name) => /^ListEditors-.*\.js$/.test(name));
  if (old === undefined) throw new Error('the build has no part that loads later');
  for (const name of names.filter((each) => each.endsWith('.js'))) {
    const file = join(assets, name);
    writeFileSync(file, readFileSync(file, 'utf8').replaceAll(old, `ListEditors-${mark}.js`));
  }
  renameSync(join(assets, old), join(assets, `ListEditors-${mark}.js`));
}
