import { readNumber } from '../../io/cellNumbers.ts';
import { readCsv } from '../../io/csv.ts';
import type { PositionColumn } from './pastePositions.ts';

/** Cells of a text that was copied from a spreadsheet; `null` where it is a single value and no table. */
export function pastedTable(text: string): readonly (readonly string[])[] | null {
  if (!/[\n\t;]/.test(text.trim())) return null;
  const read = readCsv(text);
  return read.ok ? read.table.rows : null;
}

/** The first two columns of a table, its head left out: flow and pressure. `null` where there are none. */
export function pastedPairs(text: string): readonly (readonly [string, string])[] | null {
  if (!/[\n\t;]/.test(text.trim())) return null;
  const read = readCsv(text);
  if (!read.ok) return null;
  const { rows, decimal } = read.table;
  const startsWithDigit = (cell: string) =>
    readNumber(cell, decimal ?? '.') !== null || /^\s*[\d.]/.test(cell);
  const pairs = rows
    .filter((row) => row.length >= 2 && startsWithDigit(row[0] ?? ''))
    .map((row): [string, string] => [row[0] ?? '', row[1] ?? '']);
  return pairs.length > 0 ? pairs : null;
}

/** What the columns of a table of resistors are taken for where it has no head, by their number. */
export function columnsWithoutHead(width: number): readonly PositionColumn[] {
  const byWidth: readonly (readonly PositionColumn[])[] = [
    ['watts'],
    ['part', 'watts'],
    ['on', 'flipped', 'watts'],
    ['part', 'on', 'flipped', 'watts'],
  ];
  return byWidth[Math.min(Math.max(width, 1), byWidth.length) - 1] ?? [];
}
