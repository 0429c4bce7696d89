import type { Amount, Amounts, Said } from './amount.ts';
import type { TextColumn, TextTable } from './types.ts';

/** A cell of words, a number with its text, or a text with the several numbers that it says. */
export type Cell = string | Said | { readonly text: string; readonly amounts: readonly Amount[] };

/** A head that begins with ">" stands over a column of numbers. */
export type Head = string | TextColumn;

export function table(
  id: string,
  caption: string,
  heads: readonly Head[],
  rows: readonly (readonly Cell[])[],
): TextTable {
  return {
    id,
    caption,
    columns: heads.map(columnOf),
    rows: rows.map((cells) => cells.map((cell) => (typeof cell === 'string' ? cell : cell.text))),
    amounts: rows.map((cells) => cells.map(amountsOf)),
  };
}

function columnOf(head: Head): TextColumn {
  if (typeof head !== 'string') return head;
  return head.startsWith('>') ? { head: head.slice(1), align: 'end' } : { head, align: 'start' };
}

function amountsOf(cell: Cell): readonly Amount[] {
  if (typeof cell === 'string') return [];
  return 'amounts' in cell ? cell.amounts : [behind(cell)];
}

const behind = ({ text: _, ...amount }: Said): Amount => amount;

/** These numbers of a row, each with its text. */
export function told<K extends string>(
  row: Readonly<Record<NoInfer<K>, string>> & { readonly amounts: Amounts<NoInfer<K>> },
  ...keys: readonly K[]
): Said[] {
  return keys.map((key) => ({ text: row[key], ...row.amounts[key] }));
}
