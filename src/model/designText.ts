import { findJsonFault } from './jsonPlace.ts';
import { type ReadResult, readDesign } from './readDesign.ts';

/** A design is a few thousand characters; whatever is larger than this is something else. */
export const largestDesignFile_B = 5_000_000;

/** Reads the text of a design file: size, JSON, version, every value, and how the values fit one another. Never throws. */
export function parseDesignText(text: string): ReadResult {
  const size_B = text.length;
  if (size_B > largestDesignFile_B) return refuse(tooLarge(size_B));
  const plain = text.startsWith('\ufeff') ? text.slice(1) : text;
  if (plain.trim() === '') return refuse('The file is empty.');
  let raw: unknown;
  try {
    raw = JSON.parse(plain);
  } catch {
    const fault = findJsonFault(plain);
    return refuse(
      fault === null
        ? 'This is not a JSON file.'
        : `Not a readable JSON file: line ${fault.line}, column ${fault.column}: ${fault.reason}.`,
    );
  }
  return readDesign(raw);
}

/** Said before a file is read at all, too: `size_B` is then what the file system tells. */
export function tooLarge(size_B: number): string {
  const size_MB = Math.ceil(size_B / 100_000) / 10;
  return `The file has ${size_MB} MB; a design file has at most ${largestDesignFile_B / 1_000_000} MB.`;
}

function refuse(reason: string): ReadResult {
  return { ok: false, problems: [{ path: '', reason }] };
}
