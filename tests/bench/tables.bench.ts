import { readColumns } from '../../src/io/columns.ts';
import { cost_ns } from './cost.ts';

/**
 * What reading a table costs, for each megabyte, over a plain `split` of the same text at line ends and commas in the same
 * run. What comes out of it must not grow with the length: the reader is linear, whatever stands in the text.
 */
const line = (cells: readonly string[], mark: string) => `${cells.join(mark)}\n`;
const numbers = (at: number) => [String(at), `${at % 977}.${at % 7}5`, '12.5', String(at % 13)];

const kinds: Readonly<Record<string, (length: number) => string>> = {
  'numbers, commas': (length) => grown('a,flow [m³/h],p [Pa],d\n', (at) => line(numbers(at), ','), length),
  'numbers, tabs': (length) => grown('a\tflow [m³/h]\tp [Pa]\td\n', (at) => line(numbers(at), '\t'), length),
  'numbers, blanks': (length) => grown('', (at) => line(numbers(at), ' '), length),
  'decimal commas': (length) => grown('', (at) => line(numbers(at), ';').replaceAll('.', ','), length),
  'quoted cells': (length) =>
    grown(
      '',
      (at) =>
        line(
          numbers(at).map((cell) => `"${cell}"`),
          ',',
        ),
      length,
    ),
  'one long line': (length) => '1,'.repeat(length / 2),
  'one long cell': (length) => '1'.repeat(length),
  'quotes alone': (length) => '"'.repeat(length),
  'dashes alone': (length) => '-'.repeat(length - 1).concat('x'),
  prose: (length) =>
    grown('', () => 'Nobody has ever seen a table here, and nobody will; not "yet".\n', length),
};

function grown(start: string, next: (at: number) => string, length: number): string {
  const parts = [start];
  for (let at = 0, sum = start.length; sum < length; at++) {
    const part = next(at);
    parts.push(part);
    sum += part.length;
  }
  return parts.join('');
}

function splitPlainly(text: string): number {
  return text.split('\n').reduce((sum, row) => sum + row.split(',').length, 0);
}

console.log('Reading a table, ms a megabyte, and over a plain split of the same text');
console.log('  text                 1 MB   ratio    10 MB   ratio');
for (const [name, make] of Object.entries(kinds)) {
  const cells = [1e6, 1e7].map((length) => {
    const text = make(length);
    const read_ns = cost_ns(() => (readColumns(text).ok ? 1 : 0), 1, 3);
    const split_ns = cost_ns(() => splitPlainly(text), 1, 3);
    const perMB_ms = read_ns / 1e6 / (length / 1e6);
    return `${perMB_ms.toFixed(0).padStart(7)} ${(read_ns / split_ns).toFixed(1).padStart(7)}`;
  });
  console.log(`  ${name.padEnd(18)}${cells.join('  ')}`);
}
