import type { LimitRow } from '../../report/types.ts';
import { Worked } from '../working/Worked.tsx';
import { fillStyle } from './fillStyle.ts';
import styles from './LimitList.module.css';

const nameOf = ({ label, where }: LimitRow) => `${label}, ${where}`;

/** Limits by urgency; the bar shows how much of each the present load uses, its end mark is the limit itself. */
export function LimitList({ limits }: { readonly limits: readonly LimitRow[] }) {
  return (
    <>
      <ol className={styles.list} aria-label="Limits, most urgent first">
        {limits.map((limit, i) => (
          <li key={limit.key} data-state={limit.state}>
            <span className={styles.label}>
              {limit.label} <small>{limit.where}</small>
            </span>
            <span className={styles.value}>
              <Worked id={limit.amounts.value.figure} text={limit.value} of={nameOf(limit)} among={i > 0} />{' '}
              <small>
                of {limit.limit}
                {limit.confirm ? '†' : ''}
              </small>
            </span>
            <span className={styles.below}>
              <span className={styles.track} aria-hidden="true">
                <span style={fillStyle(limit.used)} />
              </span>
              <span className={styles.state}>
                {limit.stateWord}
                {limit.margin !== '–' && (
                  <>
                    ,{' '}
                    <Worked
                      id={limit.amounts.margin.figure}
                      text={limit.margin}
                      of={`margin, ${nameOf(limit)}`}
                      among
                    />
                  </>
                )}
              </span>
            </span>
          </li>
        ))}
      </ol>
      {limits.some((limit) => limit.confirm) && (
        <p className={styles.confirm}>† Confirm the value of this limit for your case.</p>
      )}
    </>
  );
}
