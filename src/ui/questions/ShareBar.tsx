import type { ShareRow, TextTable } from '../../report/types.ts';
import { SaveRow } from '../takeOut/SaveRow.tsx';
import { Worked } from '../working/Worked.tsx';
import { partStyle } from './fillStyle.ts';
import styles from './ShareBar.module.css';

/** All of the fan's air as one bar, cut by where it goes; patterns and words tell the parts apart. */
export function ShareBar({
  shares,
  table,
}: {
  readonly shares: readonly ShareRow[];
  /** Their numbers. */
  readonly table: TextTable;
}) {
  return (
    <figure className={styles.figure}>
      <div className={styles.bar} aria-hidden="true">
        {shares.map(({ kind, share }) => (
          <span key={kind} data-kind={kind} style={partStyle(share)} />
        ))}
      </div>
      <ul>
        {shares.map(({ kind, label, percent, flow, amounts }, i) => (
          <li key={kind}>
            <span className={styles.swatch} data-kind={kind} aria-hidden="true" />
            <b>
              <Worked id={amounts.percent.figure} text={percent} of={label} among={i > 0} />
            </b>{' '}
            {label}{' '}
            <small>
              <Worked id={amounts.flow.figure} text={flow} of={`flow, ${label}`} among />
            </small>
          </li>
        ))}
      </ul>
      <SaveRow id={table.id} caption={table.caption} picture table={table} />
    </figure>
  );
}
