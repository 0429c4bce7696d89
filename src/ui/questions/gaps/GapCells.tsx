import type { GapMapReport } from '../../../report/gaps/gapMapReport.ts';
import { SaveRow } from '../../takeOut/SaveRow.tsx';
import { reachWhileScrolling } from '../DataTable.tsx';
import styles from './GapRows.module.css';
import type { TakeGap } from './useTakeGap.ts';

interface Props {
  readonly report: GapMapReport;
  readonly onTake: TakeGap;
}

/** The map as a table: film and verdict of every pair; a press puts the pair into the design. */
export function GapCells({ report, onTake }: Props) {
  const { heads, rows, tables, xLabel, yLabel } = report;
  const names = `${xLabel} and ${yLabel.toLowerCase()}`;
  const [table] = tables;
  if (table === undefined) return null;
  return (
    <div className={styles.rows}>
      <h3>Every pair: choose one to put it into the design</h3>
      <section className={styles.scroll} aria-label={table.caption} ref={reachWhileScrolling}>
        <table className={styles.table}>
          <thead>
            <tr>
              <th scope="col">{table.columns[0]?.head}</th>
              {heads.map((head) => (
                <th key={head} scope="col" className={styles.number}>
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ head, cells }) => (
              <tr key={head}>
                <th scope="row" className={styles.head}>
                  {head}
                </th>
                {cells.map((cell) => (
                  <td
                    key={cell.key}
                    className={styles.cell}
                    data-state={cell.state ?? 'none'}
                    aria-current={cell.isPresent || undefined}
                  >
                    <button
                      type="button"
                      className={`${styles.take} ${styles.pair}`}
                      disabled={cell.state === null}
                      aria-label={`${names}, ${cell.label}: ${cell.film.text}, ${cell.stateWord}`}
                      onClick={() => onTake(cell.values, `${names}, ${cell.label}`)}
                    >
                      <b>{cell.film.text}</b>
                      <small className={styles.state}>{cell.stateWord}</small>
                    </button>
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
