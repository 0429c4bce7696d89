import type { GapReport } from '../../../report/gaps/gapReport.ts';
import { SaveRow } from '../../takeOut/SaveRow.tsx';
import { reachWhileScrolling } from '../DataTable.tsx';
import { Heads } from '../tableParts.tsx';
import styles from './GapRows.module.css';
import type { TakeGap } from './useTakeGap.ts';

interface Props {
  readonly report: GapReport;
  readonly onTake: TakeGap;
}

/** Every value as a row; its first cell puts it into the design. */
export function GapRows({ report, onTake }: Props) {
  const { label, rows, tables } = report;
  const [table] = tables;
  if (table === undefined) return null;
  const side = (i: number) => (table.columns[i]?.align === 'end' ? styles.number : undefined);
  return (
    <div className={styles.rows}>
      <h3>Every value: choose one to put it into the design</h3>
      <section className={styles.scroll} aria-label={table.caption} ref={reachWhileScrolling}>
        <table className={styles.table}>
          <thead>
            <tr>
              <Heads columns={table.columns} number={styles.number} />
            </tr>
          </thead>
          <tbody>
            {rows.map((row, r) => (
              <tr key={row.key} data-state={row.state ?? 'none'} aria-current={row.isPresent || undefined}>
                <th scope="row">
                  <button
                    type="button"
                    className={styles.take}
                    disabled={row.state === null}
                    onClick={() => onTake(row.values, `${label} ${row.label}`)}
                  >
                    <b>{row.label}</b>
                  </button>
                  {row.isPresent && <small> now</small>}
                </th>
                {(table.rows[r] ?? []).slice(1).map((cell, i) => (
                  <td key={table.columns[i + 1]?.head} className={i === 0 ? styles.state : side(i + 1)}>
                    {cell}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <SaveRow id={table.id} caption={table.caption} table={table} />
    </div>
  );
}
