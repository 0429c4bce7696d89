import type { CheckReport, CheckState } from '../../../report/bench/checkReport.ts';
import { Glyph, type GlyphName } from '../../kit/Glyph.tsx';
import { SaveRow } from '../../takeOut/SaveRow.tsx';
import { reachWhileScrolling } from '../DataTable.tsx';
import { Heads } from '../tableParts.tsx';
import styles from './Bench.module.css';

const signs: Readonly<Record<CheckState, GlyphName>> = {
  instrument: 'holds',
  model: 'little',
  disagrees: 'fails',
  noAnswer: 'noAnswer',
};

const stateColumn = 1;

/** Every reading beside its computed value, its state in a sign and in words. */
export function CheckTable({ report: { check, rows } }: { readonly report: CheckReport }) {
  const { id, caption, columns } = check;
  return (
    <div className={styles.rows}>
      <h3>{caption}</h3>
      <section className={styles.scroll} aria-label={caption} ref={reachWhileScrolling}>
        <table className={styles.table}>
          <thead>
            <tr>
              <Heads columns={columns} number={styles.number} />
            </tr>
          </thead>
          <tbody>
            {rows.map(({ key, state }, at) => {
              const cells = check.rows[at] ?? [];
              return (
                <tr key={key} data-state={state}>
                  {cells.map((cell, i) => {
                    const head = columns[i]?.head ?? '';
                    if (i === 0)
                      return (
                        <th key={head} scope="row">
                          {cell}
                        </th>
                      );
                    return i === stateColumn ? (
                      <td key={head} className={styles.state}>
                        <Glyph name={signs[state]} /> <span>{cell}</span>
                      </td>
                    ) : (
                      <td key={head} className={columns[i]?.align === 'end' ? styles.number : undefined}>
                        {cell}
                      </td>
                    );
                  })}
                </tr>
              );
            })}
          </tbody>
        </table>
      </section>
      <SaveRow id={id} caption={caption} table={check} />
    </div>
  );
}
