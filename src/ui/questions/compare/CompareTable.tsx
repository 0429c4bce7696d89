import { memo } from 'react';
import type { CompareReport } from '../../../report/compare/compareReport.ts';
import { reachWhileScrolling } from '../DataTable.tsx';
import styles from './CompareTable.module.css';

/** Designs side by side, a column each: inputs that differ, then what follows, best and worst in words. */
export const CompareTable = memo(function CompareTable({ report }: { readonly report: CompareReport }) {
  const { designs, inputs, results } = report;
  return (
    <section className={styles.scroll} aria-label="Designs side by side" ref={reachWhileScrolling}>
      <table className={styles.table}>
        <thead>
          <tr>
            <td />
            {designs.map(({ letter, name }) => (
              <th key={letter} scope="col">
                <b>{letter}</b> {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          <Group words="Inputs that differ" columns={designs.length} />
          {inputs.length === 0 && (
            <tr>
              <th scope="row">none</th>
              <td colSpan={designs.length} />
            </tr>
          )}
          {inputs.map(({ key, label, cells }) => (
            <tr key={key}>
              <th scope="row">{label}</th>
              {designs.map(({ letter }, i) => (
                <td key={letter} className={cells[i] === cells[0] && i > 0 ? styles.same : undefined}>
                  {cells[i]}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
        <tbody>
          <Group words="What follows" columns={designs.length} />
          {results.map(({ key, label, cells }) => (
            <tr key={key}>
              <th scope="row">{label}</th>
              {designs.map(({ letter }, i) => (
                <td key={letter} data-standing={cells[i]?.standing ?? 'none'}>
                  {cells[i]?.text}
                  {cells[i]?.mark !== '' && <small> {cells[i]?.mark}</small>}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
});

function Group({ words, columns }: { readonly words: string; readonly columns: number }) {
  return (
    <tr className={styles.group}>
      <th scope="rowgroup">{words}</th>
      <td colSpan={columns} />
    </tr>
  );
}
