import { type Design, designSchema } from './design.ts';

/** The text of a design file: keys in the order of the schema, short rows on one line, numbers exactly as they are. */
export function serialiseDesign(design: Design): string {
  return printJson(designSchema.parse(design));
}

/** JSON for readers: short rows on one line, numbers exactly as they are. */
export function printJson(value: unknown): string {
  return `${print(value, '')}\n`;
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
