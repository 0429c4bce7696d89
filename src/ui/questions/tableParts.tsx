import type { ReactNode } from 'react';
import type { TextColumn } from '../../report/types.ts';

interface Columns {
  readonly columns: readonly TextColumn[];
  /** Class of heads and cells of numbers. */
  readonly number: string | undefined;
}

/** The heads of a table, for a row in its head. */
export function Heads({ columns, number }: Columns) {
  return columns.map(({ head, align }) => (
    <th key={head} scope="col" className={align === 'end' ? number : undefined}>
      {head}
    </th>
  ));
}

/** One row's cells, texts or what shows them; the first one names it. */
export function Cells({ columns, number, cells }: Columns & { readonly cells: readonly ReactNode[] }) {
  return columns.map(({ head, align }, i) => {
    const side = align === 'end' ? number : undefined;
    return i === 0 ? (
      <th key={head} scope="row" className={side}>
        {cells[i]}
      </th>
    ) : (
      <td key={head} className={side}>
        {cells[i]}
      </td>
    );
  });
}
