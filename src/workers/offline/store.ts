import { nameOf, namesIn } from './messages.ts';

/** One file of a build. */
export interface BuiltFile {
  /** Relative to the app's folder; empty for the page itself, which a server gives for the folder. */
  readonly path: string;
  /** Lower-case hex digest of its bytes. */
  readonly sha256: string;
}

export interface Build {
  readonly version: string;
  readonly files: readonly BuiltFile[];
}

/** What a worker stands in; replaced in tests. */
export interface Surroundings {
  /** Address of the app's folder, ends in `/`. */
  readonly folder: string;
  readonly caches: CacheStorage;
  readonly fetch: (request: Request) => Promise<Response>;
  /** Names of the locks that pages hold now. */
  readonly locks: () => Promise<readonly string[]>;
}

/**
 * Stores every file of a build, or throws: a build is whole or it is not used. What is there already, from an earlier
 * version or an attempt that broke off, is not loaded again. Bytes count, not names: a server in the middle of being
 * brought up to date, or one that gives its page for whatever it lacks, is found out.
 */
export async function storeBuild(build: Build, around: Surroundings): Promise<void> {
  const cache = await around.caches.open(nameOf(build.version, around.folder));
  const stored = build.files.map(async (file) => {
    const held = await heldElsewhere(file, around);
    await cache.put(addressOf(file, around), held ?? (await load(file, around)));
  });
  // All that can be had is kept, so that the next attempt has less to load.
  await Promise.allSettled(stored);
  await Promise.all(stored);
}

/**
 * The stored answer to a request, or one from the network where there is none: the build's own file, the page for a
 * visit, or a file of another version that an open page may still need.
 */
export async function answer(request: Request, build: Build, around: Surroundings): Promise<Response> {
  const file = fileFor(request, build, around);
  const address = file === undefined ? request.url : addressOf(file, around);
  const cache = await around.caches.open(nameOf(build.version, around.folder));
  const own = await cache.match(address);
  if (own !== undefined) return own;
  if (file !== undefined) {
    try {
      const loaded = await load(file, around);
      await cache.put(address, loaded.clone());
      return loaded;
    } catch {
      // A server that has another version by now, or none at all: what follows is all that is left.
    }
  }
  for (const other of await cachesHere(around)) {
    const held = await other.match(address);
    if (held !== undefined) return held;
  }
  return around.fetch(request);
}

/** Puts right what was lost from the cache or harmed in it; what cannot be loaded now is left as it is. */
export async function mendBuild(build: Build, around: Surroundings): Promise<void> {
  const cache = await around.caches.open(nameOf(build.version, around.folder));
  for (const file of build.files) {
    const address = addressOf(file, around);
    const held = await cache.match(address);
    if (held !== undefined && (await isWhole(held, file))) continue;
    try {
      await cache.put(address, await load(file, around));
    } catch {
      // Without network; the next visit tries again.
    }
  }
}

/** Removes the other versions that no open page needs. */
export async function removeOthers(build: Build, around: Surroundings): Promise<void> {
  const needed = new Set([nameOf(build.version, around.folder), ...(await around.locks())]);
  for (const name of await namesHere(around)) if (!needed.has(name)) await around.caches.delete(name);
}

/** Which file of the build a request is for. */
function fileFor(request: Request, { files }: Build, { folder }: Surroundings): BuiltFile | undefined {
  const { origin, pathname } = new URL(request.url);
  const base = new URL(folder);
  if (origin !== base.origin || !pathname.startsWith(base.pathname)) return undefined;
  const path = pathname.slice(base.pathname.length);
  const isPage = path === 'index.html' || (request.mode === 'navigate' && !/[.]\w+$/.test(path));
  return files.find((file) => encodeURI(file.path) === (isPage ? '' : path));
}

async function load(file: BuiltFile, around: Surroundings): Promise<Response> {
  const response = await around.fetch(new Request(addressOf(file, around), { cache: 'no-cache' }));
  if (!response.ok) throw new Error(`${file.path}: the server answered ${response.status}`);
  const bytes = await response.arrayBuffer();
  if ((await digestOf(bytes)) !== file.sha256) throw new Error(`${file.path}: not the file of this version`);
  // Anew: one that was redirected may not answer a visit, and one with `Vary: Origin` no script.
  return new Response(bytes, { headers: { 'Content-Type': response.headers.get('Content-Type') ?? '' } });
}

async function heldElsewhere(file: BuiltFile, around: Surroundings): Promise<Response | undefined> {
  for (const cache of await cachesHere(around)) {
    const held = await cache.match(addressOf(file, around));
    if (held !== undefined && (await isWhole(held.clone(), file))) return held;
  }
  return undefined;
}

async function isWhole(response: Response, file: BuiltFile): Promise<boolean> {
  try {
    return (await digestOf(await response.arrayBuffer())) === file.sha256;
  } catch {
    return false;
  }
}

async function digestOf(bytes: ArrayBuffer): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

function addressOf({ path }: BuiltFile, { folder }: Surroundings): string {
  return new URL(encodeURI(path), folder).href;
}

async function namesHere({ caches, folder }: Surroundings): Promise<string[]> {
  return (await caches.keys()).filter((name) => name.startsWith(namesIn(folder)));
}

async function cachesHere(around: Surroundings): Promise<Cache[]> {
  return Promise.all((await namesHere(around)).map((name) => around.caches.open(name)));
}
