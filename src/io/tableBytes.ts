export type TableText =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly reason: string };

/** How files that are no text begin, and what to do instead. */
const others: readonly (readonly [start: readonly number[], what: string])[] = [
  [[0x89, 0x50, 0x4e, 0x47], 'a picture (PNG).'],
  [[0xff, 0xd8, 0xff], 'a picture (JPEG).'],
  [[0x47, 0x49, 0x46, 0x38], 'a picture (GIF).'],
  [[0x25, 0x50, 0x44, 0x46], 'a PDF. Copy the table from it and paste it.'],
  [[0x50, 0x4b, 0x03, 0x04], 'a workbook or another packed file. Save the sheet as CSV and open that.'],
  [[0xd0, 0xcf, 0x11, 0xe0], 'a workbook or another office file. Save the sheet as CSV and open that.'],
  [[0x1f, 0x8b], 'a packed file.'],
];

/**
 * The text of a file: by its byte order mark UTF-8 or UTF-16, as spreadsheets write “Unicode text”; without one UTF-8,
 * and what cannot be that is taken for Windows-1252, as spreadsheets of the West save CSV (common practice, no source).
 */
export function tableText(bytes: Uint8Array<ArrayBuffer>): TableText {
  const other = others.find(([start]) => start.every((byte, at) => bytes[at] === byte));
  if (other !== undefined) return { ok: false, reason: `This is no text but ${other[1]}` };
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return decoded(bytes, 'utf-16le');
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return decoded(bytes, 'utf-16be');
  const read = decoded(bytes, 'utf-8');
  const hasMark = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf;
  return read.ok || hasMark ? read : decoded(bytes, 'windows-1252');
}

/** Without its byte order mark. */
function decoded(bytes: Uint8Array<ArrayBuffer>, encoding: string): TableText {
  try {
    return { ok: true, text: new TextDecoder(encoding, { fatal: true }).decode(bytes) };
  } catch {
    return {
      ok: false,
      reason: `This file begins as ${encoding.toUpperCase()}, but does not go on like that.`,
    };
  }
}
