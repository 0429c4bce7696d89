import type { TextTable } from '../../report/types.ts';
import { SetEquations } from './SetEquations.tsx';

interface Props {
  readonly table: TextTable;
  /** Rows of it that stand here. */
  readonly from: number;
  readonly to: number;
  /** Millimetres of every column; left to themselves where none are given. */
  readonly widths?: readonly (number | undefined)[];
}

/** Letters up to which a cell is not broken into lines. */
const shortest = 16;

/** A table or a piece of one, its heads above it again. */
export function SheetTable({ table: { caption, columns, rows }, from, to, widths = [] }: Props) {
  const fixed = widths.length === columns.length;
  const isShort = columns.map((_, i) => rows.every((cells) => (cells[i] ?? '').length <= shortest));
  const className = (i: number) =>
    [
      columns[i]?.align === 'end' ? 'number' : '',
      isShort[i] ? 'short' : '',
      columns[i]?.typeset ? 'typeset' : '',
    ]
      .filter((name) => name !== '')
      .join(' ') || undefined;
  const shown = rows.slice(from, to).map((cells, i) => ({ number: from + i, cells }));
  const sum = widths.reduce<number>((all, width = 0) => all + width, 0);
  return (
    <table className={fixed ? 'fixed' : undefined} style={fixed ? { inlineSize: `${sum}mm` } : undefined}>
      {widths.length > 0 && (
        <colgroup>
          {columns.map(({ head }, i) => (
            <col key={head} style={widths[i] === undefined ? undefined : { inlineSize: `${widths[i]}mm` }} />
          ))}
        </colgroup>
      )}
      <caption>{from > 0 ? `${caption}, continued` : caption}</caption>
      <thead>
        <tr>
          {columns.map(({ head }, i) => (
            <th key={head} scope="col" className={className(i)}>
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {shown.map(({ number, cells }) => (
          <tr key={number}>
            {cells.map((cell, i) =>
              i === 0 ? (
                <th key={columns[i]?.head} scope="row" className={className(i)}>
                  {cell}
                </th>
              ) : (
                <td key={columns[i]?.head} className={className(i)}>
                  {columns[i]?.typeset ? <SetEquations text={cell} /> : cell}
                </td>
              ),
            )}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
