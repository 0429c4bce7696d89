import { type Design, designSchema } from '../model/design.ts';
import { type ReadResult, readDesign } from '../model/readDesign.ts';
import { findJsonFault } from './jsonPlace.ts';

/** A design is a few thousand characters; whatever is larger than this is something else. */
export const largestDesignFile_B = 5_000_000;

export const designFileEnding = '.throughfin.json';

/** The text of a design file: keys in the order of the schema, short rows on one line, numbers exactly as they are. */
export function serialiseDesign(design: Design): string {
  return `${print(designSchema.parse(design), '')}\n`;
}

const widest = 96;

function print(value: unknown, indent: string): string {
  const flat = onOneLine(value);
  if (
    typeof value !== 'object' ||
    value === null ||
    (indent !== '' && isLeaf(value) && indent.length + flat.length <= widest)
  ) {
    return flat;
  }
  const inner = `${indent}  `;
  if (Array.isArray(value)) {
    if (value.length === 0) return '[]';
    return `[\n${value.map((item) => inner + print(item, inner)).join(',\n')}\n${indent}]`;
  }
  const members = Object.entries(value).map(
    ([key, item]) => `${inner}${JSON.stringify(key)}: ${print(item, inner)}`,
  );
  return `{\n${members.join(',\n')}\n${indent}}`;
}

function isLeaf(value: object): boolean {
  return Object.values(value).every((item) => typeof item !== 'object' || item === null);
}

function onOneLine(value: unknown): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map(onOneLine).join(', ')}]`;
  return `{ ${Object.entries(value)
    .map(([key, item]) => `${JSON.stringify(key)}: ${onOneLine(item)}`)
    .join(', ')} }`;
}

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

/** A file name from the title: letters and digits of any script, the rest as hyphens. */
export function designFileName(design: Design): string {
  const stem = `${design.title} ${design.revision}`
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);
  return `${stem === '' ? 'fan-box' : stem}${designFileEnding}`;
}

function refuse(reason: string): ReadResult {
  return { ok: false, problems: [{ path: '', reason }] };
}
