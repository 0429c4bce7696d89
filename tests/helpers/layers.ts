import { posix } from 'node:path';

/**
 * The one direction of dependency: a room imports only from rooms on lines above its own, and from itself. Rooms on
 * one line do not know each other.
 */
const order: readonly (readonly string[])[] = [
  ['units'],
  ['core'],
  ['model'],
  ['studies'],
  ['report'],
  ['io', 'workers'],
  ['cli', 'store'],
  ['ui'],
  ['app'],
];

const inWords = order.map((line) => (line.length > 1 ? `{${line.join(', ')}}` : line[0])).join(' → ');

/** Packages, with the rooms that may use them. */
const packages: Readonly<Record<string, readonly string[]>> = {
  zod: ['model', 'studies', 'report', 'io', 'workers', 'cli', 'store', 'ui', 'app'],
  zustand: ['store', 'ui', 'app'],
  'idb-keyval': ['store'],
  react: ['ui', 'app'],
  'react-dom': ['ui', 'app'],
  recharts: ['ui'],
  vite: ['cli'],
};

/** Where a module belongs: its room, `main` for the entry, or null for a folder that is in no room. */
function roomOf(path: string): string | null {
  if (path === 'src/main.tsx') return 'main';
  const room = /^src\/([^/]+)\//.exec(path)?.[1];
  return room !== undefined && order.flat().includes(room) ? room : null;
}

/** What is wrong with one import of one module, in a sentence; null if nothing is. */
export function judgeImport(path: string, specifier: string): string | null {
  const room = roomOf(path);
  if (room === null) return `${path} is in no room. Rooms: ${inWords}, and src/main.tsx.`;
  if (!specifier.startsWith('.')) return judgePackage(path, room, specifier);
  const target = posix.join(posix.dirname(path), specifier);
  const targetRoom = roomOf(target);
  if (targetRoom === null) return `${path} imports ${target}, which is in no room. Rooms: ${inWords}.`;
  if (targetRoom === room) return null;
  if (room === 'main') {
    return targetRoom === 'app' ? null : `src/main.tsx imports ${target}: it may import app only.`;
  }
  if (levelOf(targetRoom) < levelOf(room)) return null;
  return (
    `${path} imports ${target}: ${room} may not know ${targetRoom}. Order: ${inWords}. ` +
    `Move what ${room} needs from there down to a room left of both, or hand it in as an argument.`
  );
}

function judgePackage(path: string, room: string, specifier: string): string | null {
  if (specifier.startsWith('node:')) {
    return room === 'cli'
      ? null
      : `${path} imports ${specifier}: only src/cli runs on Node. Hand the data in.`;
  }
  const name = specifier.split('/')[0] ?? '';
  const rooms = room === 'main' ? ['react', 'react-dom'].includes(name) : packages[name]?.includes(room);
  if (rooms === true) return null;
  const allowed = packages[name];
  return allowed === undefined
    ? `${path} imports ${name}, a package that no room is known to use: add it to tests/helpers/layers.ts.`
    : `${path} imports ${name}: only ${allowed.join(', ')} may. Code that needs it belongs there.`;
}

function levelOf(room: string): number {
  const level = order.findIndex((line) => line.includes(room));
  return room === 'main' ? order.length : level;
}
