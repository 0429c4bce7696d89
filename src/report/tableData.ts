import type { TextTable } from './types.ts';

/** A table for a program: one head a column, bare numbers, `null` for what is missing. */
export interface TableData {
  readonly heads: readonly string[];
  readonly rows: readonly (readonly (string | number | null)[])[];
}

type DataColumn = readonly [head: string, cells: readonly (string | number | null)[]];

/**
 * The table with its numbers bare and their unit in the head; where the unit changes from row to row it has a column of its
 * own.
 */
export function tableData(table: TextTable): TableData {
  const columns = table.columns.flatMap((_, i) => columnsOf(table, i));
  return {
    heads: columns.map(([head]) => head),
    rows: table.rows.map((_, r) => columns.map(([, cells]) => cells[r] ?? null)),
  };
}

function columnsOf({ columns, rows, amounts }: TextTable, at: number): DataColumn[] {
  const { head = '', parts = [head] } = columns[at] ?? {};
  const behind = amounts.map((row) => row[at] ?? []);
  const count = Math.max(...behind.map(({ length }) => length));
  if (!(count > 0)) return [[head, rows.map((row) => words(row[at] ?? ''))]];
  return Array.from({ length: count }, (_, k): DataColumn[] => {
    const part = parts[k] ?? head;
    const cells = behind.map((each) => each[k]);
    const units = cells.map((amount) => amount?.unit ?? null);
    const [unit = '', ...others] = new Set(units.filter((symbol) => symbol !== null));
    const values = cells.map((amount) => bare(amount?.value ?? null));
    if (others.length > 0)
      return [
        [part, values],
        [`${part}, unit`, units],
      ];
    return [[unit === '' ? part : `${part}, ${unit}`, values]];
  }).flat();
}

/** Words for a place where nothing is to be said. */
const nothing = ['', '–'];

/** Narrow spaces are for the eye; in a file they keep people from finding "5 mm". */
function words(text: string): string | null {
  return nothing.includes(text) ? null : text.replaceAll('\u202f', ' ');
}

/** More digits than any answer is good for, without the noise behind the last digit of a binary number. */
const digits = 7;

function bare(value: number | null): number | null {
  return value !== null && Number.isFinite(value) ? Number(value.toPrecision(digits)) : null;
}
