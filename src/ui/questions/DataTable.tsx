import type { TextTable } from '../../report/types.ts';
import styles from './TableTwin.module.css';

/** Rows of text; the first cell names its row. */
export function DataTable({ table: { caption, columns, rows } }: { readonly table: TextTable }) {
  const side = (i: number) => (columns[i]?.align === 'end' ? styles.number : undefined);
  return (
    <section className={styles.scroll} aria-label={caption} tabIndex={0}>
      <table className={styles.table}>
        <thead>
          <tr>
            {columns.map(({ head }, i) => (
              <th key={head} scope="col" className={side(i)}>
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((cells) => (
            <tr key={cells.join('|')}>
              {cells.map((cell, i) =>
                i === 0 ? (
                  <th key={columns[i]?.head} scope="row" className={side(i)}>
                    {cell}
                  </th>
                ) : (
                  <td key={columns[i]?.head} className={side(i)}>
                    {cell}
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
