import { type DecimalMark, isBare, isValue, settled } from './cellNumbers.ts';
import { type Column, isUnit, readHead } from './columnHead.ts';
import { type CsvTable, readCsv, usualWidth } from './csv.ts';
import { noTable } from './noTable.ts';
import type { Separator } from './splitCells.ts';

export type { Column };

/** A table of text as columns with names and units. */
export interface Columns {
  /** `null` where the first line holds values already. A line of units under the names is merged into them. */
  readonly head: readonly Column[] | null;
  /** Equally many cells each, an empty one where a line ends early. */
  readonly rows: readonly (readonly string[])[];
  /** Line of the text in which each row begins, from 1: for messages. */
  readonly lines: readonly number[];
  readonly separator: Separator;
  /** `null` where no number shows it. */
  readonly decimal: DecimalMark | null;
}

export type ColumnsResult =
  | { readonly ok: true; readonly columns: Columns }
  | { readonly ok: false; readonly reason: string };

type Rows = Pick<CsvTable, 'rows' | 'lines'>;

/**
 * Reads any table of text: which mark parts its cells, whether the first line is a head, which units it names. Captions
 * above the table and columns without a single cell are left out. A line with more cells than the table has columns is
 * refused, with its number. Numbers stay as they are written, but for those that only the rest of the table tells from
 * one another: 1,234 among decimal commas. In time that grows as the text.
 */
export function readColumns(text: string): ColumnsResult {
  const refusal = noTable(text);
  if (refusal !== null) return { ok: false, reason: refusal };
  const read = readCsv(text);
  if (!read.ok) return read;
  const { separator, decimal } = read.table;
  const table = withoutCaptions(read.table);
  const { head: all, height } = headOf(table, separator);
  const body = below(table, height);
  const width = all?.length ?? body.rows[0]?.length ?? 0;
  const ragged = raggedLine(body, width, separator, all !== null);
  if (ragged !== null) return { ok: false, reason: ragged };
  const kept = columnsInUse(all, body.rows, width);
  const rows = body.rows.map((row) => kept.map((column) => settled((row[column] ?? '').trim(), decimal)));
  const head = all === null ? null : kept.map((column) => all[column] ?? readHead(''));
  return { ok: true, columns: { head, rows, lines: body.lines, separator, decimal } };
}

/** A cell with its column's unit where it is a bare number: `12,5` under `flow [m³/h]` → `12,5 m³/h`. */
export function withUnit(cell: string, unit: string | null): string {
  return unit !== null && isBare(cell) ? `${cell} ${unit}` : cell;
}

function below({ rows, lines }: Rows, height: number): Rows {
  return { rows: rows.slice(height), lines: lines.slice(height) };
}

/** Lines of one cell before a table of several columns say whose it is. */
function withoutCaptions(table: Rows): Rows {
  if (usualWidth(table.rows) < 2) return table;
  const first = table.rows.findIndex((row) => row.filter((cell) => cell.trim() !== '').length > 1);
  return first > 0 ? below(table, first) : table;
}

interface Named {
  readonly head: readonly Column[] | null;
  /** Lines above the first row, captions and all. */
  readonly height: number;
}

/** The head is the line of words nearest above the numbers; what stands above it says whose the table is. */
function headOf({ rows }: Rows, separator: Separator): Named {
  const first = firstNumbers(rows);
  let at = first - 1;
  while (at >= 0 && hasValue(rows[at] ?? [])) at--;
  if (at < 0) return { head: null, height: 0 };
  const width = rows[first]?.length ?? 0;
  const apart = (row: readonly string[]) => (separator === ' ' && row.length > width ? joined(row) : row);
  const line = rows[at] ?? [];
  const above = apart(rows[at - 1] ?? []);
  const units = above.length > 0 && !hasValue(above) ? unitsIn(line, above.length) : null;
  const names = (units === null ? apart(line) : above).map(readHead);
  const head =
    units === null ? names : names.map((column, i) => ({ ...column, unit: column.unit ?? units[i] ?? null }));
  return { head, height: at + 1 };
}

/** The first row of mostly numbers, or else the first with any; −1 where there is none. */
function firstNumbers(rows: Rows['rows']): number {
  const width = usualWidth(rows);
  const isMost = (row: readonly string[]) =>
    2 * row.filter((cell) => isValue(cell.trim())).length > row.filter(Boolean).length;
  const first = rows.findIndex((row) => row.length === width && isMost(row));
  return first >= 0 ? first : rows.findIndex(hasValue);
}

function hasValue(row: readonly string[]): boolean {
  return row.some((cell) => isValue(cell.trim()));
}

/** A line of nothing but units, in brackets or not; `null` where it is another. */
function unitsIn(row: readonly string[], width: number): (string | null)[] | null {
  const plain = row.map((cell) => cell.trim().replace(/^[([{](.*)[)\]}]$/, '$1'));
  const isLine =
    row.length <= width && plain.some(isUnit) && plain.every((cell) => isUnit(cell) || /^[-–—]?$/.test(cell));
  return isLine ? plain.map((cell) => (isUnit(cell) ? cell : null)) : null;
}

/** Where blanks part the cells, a unit in brackets belongs to the word before it. */
function joined(words: readonly string[]): string[] {
  const cells: string[] = [];
  for (const word of words) {
    const last = cells.length - 1;
    if (last >= 0 && /^[([/]/.test(word)) cells[last] += ` ${word}`;
    else cells.push(word);
  }
  return cells;
}

/** What is wrong with the first line that does not fit the columns; `null` where all do. */
function raggedLine(
  { rows, lines }: Rows,
  width: number,
  separator: Separator,
  hasHead: boolean,
): string | null {
  // Between blanks no cell can be left empty, so that a short line does not tell which one it lacks.
  const fits = (row: readonly string[]) =>
    separator === ' '
      ? row.length === width
      : row.length <= width || row.slice(width).every((cell) => cell.trim() === '');
  const at = rows.findIndex((row) => !fits(row));
  if (at < 0) return null;
  const found = rows[at]?.length ?? 0;
  const comma =
    separator === ',' ? ' If a comma is the decimal mark, part the cells by semicolons or tabs.' : '';
  return `Line ${lines[at]} has ${count(found)}, and ${hasHead ? 'the head' : 'the first line'} ${width}.${comma}`;
}

function count(cells: number): string {
  return cells === 1 ? 'one cell' : `${cells} cells`;
}

/** A mark at the end or the beginning of every line makes a column of nothing. */
function columnsInUse(
  head: readonly Column[] | null,
  rows: readonly (readonly string[])[],
  width: number,
): number[] {
  const isUsed = (column: number) =>
    (head?.[column]?.written ?? '') !== '' || rows.some((row) => (row[column] ?? '').trim() !== '');
  return Array.from({ length: width }, (_, column) => column).filter(isUsed);
}
