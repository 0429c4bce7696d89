import { type DecimalMark, decimalOf, isValue } from './cellNumbers.ts';
import { type Cells, type Separator, splitCells } from './splitCells.ts';

export interface CsvTable extends Cells {
  readonly separator: Separator;
  /** `null` where no number shows which mark is the decimal one. */
  readonly decimal: DecimalMark | null;
}

export type CsvResult =
  | { readonly ok: true; readonly table: CsvTable }
  | { readonly ok: false; readonly reason: string };

/** The earlier of two that fit equally well is taken. */
const candidates: readonly Separator[] = ['\t', ';', '|', ',', ' '];

/** So many rows show what parts them. */
const looked = 200;

/**
 * Reads a table as people have it: separators `;` tab `|` `,` or blanks, quotes, a byte order mark, decimal commas, lines
 * of comment. The separator is that of a first line `sep=;`, or the one that parts the lines most evenly into most
 * numbers; a comma is never taken for one where it would tear a decimal number apart. In time that grows as the text.
 */
export function readCsv(text: string): CsvResult {
  const start = text.startsWith('\ufeff') ? 1 : 0;
  const [told = '', named] = /^sep=(.)(?:\r\n?|\n|$)/i.exec(text.slice(start, start + 10)) ?? [];
  const stated = candidates.find((separator) => separator === named);
  const plain = text.slice(start + told.length);
  let reason = 'No table found: there is no line with at least one cell.';
  for (const separator of stated === undefined ? byFit(plain) : [stated]) {
    const read = splitCells(plain, separator);
    if (!read.ok) {
      reason = read.reason;
      continue;
    }
    if (read.cells.rows.length === 0) continue;
    const lines = told === '' ? read.cells.lines : read.cells.lines.map((line) => line + 1);
    return {
      ok: true,
      table: { separator, decimal: decimalOf(read.cells.rows), rows: read.cells.rows, lines },
    };
  }
  return { ok: false, reason };
}

/** The separators that could part this text, the likeliest first. */
function byFit(text: string): readonly Separator[] {
  return candidates
    .map((separator) => ({ separator, fit: fitOf(text, separator) }))
    .toSorted((a, b) => b.fit - a.fit)
    .map(({ separator }) => separator);
}

/** Numbers in all rows below the first count most, then equal width, then more than one column. */
function fitOf(text: string, separator: Separator): number {
  const read = splitCells(text, separator, looked);
  const rows = read.ok ? read.cells.rows : [];
  const width = usualWidth(rows);
  const regular = rows.filter((row) => row.length === width);
  if (regular.length === 0) return 0;
  const cells = (regular.length > 1 ? regular.slice(1) : regular).flat().filter((cell) => cell !== '');
  const numbers = cells.filter(isValue).length / Math.max(cells.length, 1);
  // Any sentence has blanks.
  if (separator === ' ' && numbers < 0.5) return 1;
  const even = regular.length / rows.length;
  return (width > 1 ? 2 : 0) + (isOneColumn(rows, numbers) ? 3 : 0) + 4 * even + 8 * numbers;
}

/** A word without a comma over numbers that have one: those commas are decimal. */
function isOneColumn(rows: readonly (readonly string[])[], numbers: number): boolean {
  const first = rows[0]?.[0] ?? '';
  return (
    numbers === 1 && rows.every(({ length }) => length === 1) && !isValue(first) && !/[;,|\t]/.test(first)
  );
}

/** The number of cells that most rows have, the larger of two that are equally frequent. */
export function usualWidth(rows: readonly (readonly string[])[]): number {
  const counts = new Map<number, number>();
  for (const { length } of rows) counts.set(length, (counts.get(length) ?? 0) + 1);
  let best = 0;
  for (const [width, count] of counts) {
    const most = counts.get(best) ?? 0;
    if (count > most || (count === most && width > best)) best = width;
  }
  return best;
}
