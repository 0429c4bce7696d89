import { findJsonFault } from './jsonPlace.ts';
import { type ReadProblem, type ReadResult, readDesign } from './readDesign.ts';

/** A design is a few thousand characters; whatever is larger than this is something else. */
export const largestDesignFile_B = 5_000_000;

/** Reads the text of a design file: size, JSON, version, every value, and how the values fit one another. Never throws. */
export function parseDesignText(text: string): ReadResult {
  const read = parseJsonText(text);
  return read.ok ? readDesign(read.raw) : read;
}

export type JsonRead =
  | { readonly ok: true; readonly raw: unknown }
  | { readonly ok: false; readonly problems: readonly ReadProblem[] };

/** A text that should be JSON, of any of the files of the program → what it says, or where it breaks. Never throws. */
export function parseJsonText(text: string): JsonRead {
  const size_B = text.length;
  if (size_B > largestDesignFile_B) return refuse(tooLarge(size_B));
  const plain = text.startsWith('\ufeff') ? text.slice(1) : text;
  if (plain.trim() === '') return refuse('The file is empty.');
  try {
    return { ok: true, raw: JSON.parse(plain) };
  } catch {
    const fault = findJsonFault(plain);
    return refuse(
      fault === null
        ? 'This is not a JSON file.'
        : `Not a readable JSON file: line ${fault.line}, column ${fault.column}: ${fault.reason}.`,
    );
  }
}

/** Said before a file is read at all, too: `size_B` is then what the file system tells. */
export function tooLarge(size_B: number): string {
  const size_MB = Math.ceil(size_B / 100_000) / 10;
  return `The file has ${size_MB} MB; a design file has at most ${largestDesignFile_B / 1_000_000} MB.`;
}

function refuse(reason: string): JsonRead {
  return { ok: false, problems: [{ path: '', reason }] };
}
