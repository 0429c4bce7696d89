import { createHash } from 'node:crypto';
import { beforeEach, describe, expect, test } from 'vitest';
import { nameOf } from '../../../../src/workers/offline/messages.ts';
import {
  answer,
  type Build,
  mendBuild,
  removeOthers,
  type Surroundings,
  storeBuild,
} from '../../../../src/workers/offline/store.ts';

const folder = 'https://bench.example/box/';

/** As much of the browser's own store as the worker uses. */
class MemoryCaches {
  readonly kept = new Map<string, Map<string, Response>>();
  async open(name: string) {
    const kept = this.kept.get(name) ?? new Map<string, Response>();
    this.kept.set(name, kept);
    return {
      put: async (address: string, response: Response) => void kept.set(address, response),
      match: async (address: string) => kept.get(address)?.clone(),
    };
  }
  keys = async () => [...this.kept.keys()];
  delete = async (name: string) => this.kept.delete(name);
}

const buildOf = (version: string, files: Readonly<Record<string, string>>): Build => ({
  version,
  files: Object.entries(files).map(([path, text]) => ({
    path,
    sha256: createHash('sha256').update(text).digest('hex'),
  })),
});

const filesOf = {
  one: { '': '<p>one</p>', 'assets/part-1.js': 'part 1', 'icon.svg': '<svg/>' },
  two: { '': '<p>two</p>', 'assets/part-2.js': 'part 2', 'icon.svg': '<svg/>' },
};
const one = buildOf('one', filesOf.one);
const two = buildOf('two', filesOf.two);

let memory: MemoryCaches;
let online: Readonly<Record<string, string>> | null;
let asked: string[];
let locks: string[];
let around: Surroundings;

beforeEach(() => {
  memory = new MemoryCaches();
  online = filesOf.one;
  asked = [];
  locks = [];
  around = {
    folder,
    caches: memory as unknown as CacheStorage,
    fetch: async ({ url }) => {
      const path = url.slice(folder.length);
      asked.push(path);
      if (online === null) throw new TypeError('no network');
      // Like a server that gives its page for whatever it lacks.
      return new Response(online[path] ?? online['']);
    },
    locks: async () => locks,
  };
});

const request = (path: string, mode = 'cors') =>
  ({ url: new URL(path, folder).href, mode, method: 'GET' }) as Request;
const textFor = async (path: string, build: Build, mode?: string) =>
  (await answer(request(path, mode), build, around)).text();

describe('a build', () => {
  test('is answered from the store alone once it is stored', async () => {
    await storeBuild(one, around);
    online = null;
    expect(await textFor('', one, 'navigate')).toBe('<p>one</p>');
    expect(await textFor('index.html?from=home', one, 'navigate')).toBe('<p>one</p>');
    expect(await textFor('deep/link', one, 'navigate')).toBe('<p>one</p>');
    expect(await textFor('assets/part-1.js', one)).toBe('part 1');
    // A file may be visited by itself.
    expect(await textFor('icon.svg', one, 'navigate')).toBe('<svg/>');
    await expect(textFor('assets/unknown.js', one)).rejects.toThrow('no network');
  });

  test('loads only what no other version has', async () => {
    await storeBuild(one, around);
    online = filesOf.two;
    asked = [];
    await storeBuild(two, around);
    expect(asked.sort()).toEqual(['', 'assets/part-2.js']);
  });

  test('goes on where an earlier attempt broke off', async () => {
    online = { ...filesOf.one, 'assets/part-1.js': 'par' };
    await expect(storeBuild(one, around)).rejects.toThrow('not the file of this version');
    online = filesOf.one;
    asked = [];
    await storeBuild(one, around);
    expect(asked).toEqual(['assets/part-1.js']);
  });

  test('is not stored from a server that has another one by now', async () => {
    online = filesOf.two;
    await expect(storeBuild(one, around)).rejects.toThrow('not the file of this version');
  });

  test('answers a page of another version with that version’s parts', async () => {
    await storeBuild(one, around);
    online = filesOf.two;
    await storeBuild(two, around);
    online = null;
    expect(await textFor('assets/part-1.js', two)).toBe('part 1');
    expect(await textFor('', two, 'navigate')).toBe('<p>two</p>');
  });

  test('gets back from the network what was lost, and stores it again', async () => {
    await storeBuild(one, around);
    memory.kept.get(nameOf('one', folder))?.delete(`${folder}assets/part-1.js`);
    expect(await textFor('assets/part-1.js', one)).toBe('part 1');
    online = null;
    expect(await textFor('assets/part-1.js', one)).toBe('part 1');
  });
});

describe('mending', () => {
  const harm = () =>
    memory.kept.get(nameOf('one', folder))?.set(`${folder}assets/part-1.js`, new Response('pa'));

  test('loads again what was harmed and nothing else', async () => {
    await storeBuild(one, around);
    harm();
    asked = [];
    await mendBuild(one, around);
    expect(asked).toEqual(['assets/part-1.js']);
    expect(await textFor('assets/part-1.js', one)).toBe('part 1');
  });

  test('puts nothing worse in its place', async () => {
    await storeBuild(one, around);
    harm();
    for (const server of [filesOf.two, null]) {
      online = server;
      await mendBuild(one, around);
      expect(await textFor('assets/part-1.js', one)).toBe('pa');
    }
  });
});

describe('other versions', () => {
  test('are removed when no page holds them, and nobody else’s store is touched', async () => {
    const neighbours = [nameOf('one', 'https://bench.example/other/'), 'something else'];
    for (const name of neighbours) await memory.open(name);
    await storeBuild(one, around);
    online = filesOf.two;
    await storeBuild(two, around);
    locks = [nameOf('one', folder)];
    await removeOthers(two, around);
    expect(await memory.keys()).toContain(nameOf('one', folder));
    locks = [];
    await removeOthers(two, around);
    expect(await memory.keys()).toEqual([...neighbours, nameOf('two', folder)]);
  });
});
