import { parseJsonText } from '../model/designText.ts';
import { printJson } from '../model/serialiseDesign.ts';
import type { OwnEntry } from '../model/shelf/entry.ts';
import { readShelf, type ShelfRead, shelfFormat } from '../model/shelf/ownEntries.ts';

export const shelfFileName = 'my-shelf.throughfin-shelf.json';

/** The text of a file of the reader's own entries. */
export function serialiseShelf(entries: readonly OwnEntry[]): string {
  return printJson({ format: shelfFormat, version: 1, entries });
}

/** The entries of such a text, or every reason why it is refused, each with its place. Never throws. */
export function parseShelfText(text: string): ShelfRead {
  const read = parseJsonText(text);
  return read.ok ? readShelf(read.raw) : read;
}
