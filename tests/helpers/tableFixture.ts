import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { tableText } from '../../src/io/tableBytes.ts';

const folder = fileURLToPath(new URL('../fixtures/tables/', import.meta.url));

/** Names of all invented tables. */
export const tableFixtures = readdirSync(folder).filter((name) => /\.(?:csv|tsv|txt)$/.test(name));

/** An invented table as the page reads a file; why it cannot be read, as an error. */
export function tableFixture(name: string): string {
  const read = tableText(new Uint8Array(readFileSync(`${folder}${name}`)));
  if (!read.ok) throw new Error(read.reason);
  return read.text;
}
