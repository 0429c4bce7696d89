import type { Cited, ShelfEntry } from '../../src/model/shelf/entry.ts';
import type { KindId } from '../../src/model/shelf/kinds.ts';
import { shelf } from '../../src/model/shelf/shelf.ts';

/** The entry of this name as it comes with the program. */
export function shelfEntry(kind: KindId, name: string): ShelfEntry {
  const entry = shelf[kind].find((each) => each.name === name);
  if (entry === undefined) throw new Error(`no ${kind} is called ${name}`);
  return entry;
}

/** One of its numbers, with source and scatter. */
export function shelfValue(kind: KindId, name: string, key: string): Cited {
  const value = shelfEntry(kind, name).values[key];
  if (value === undefined) throw new Error(`${name} has no ${key}`);
  return value;
}
