import type { RatingRow } from '../../report/types.ts';
import { Worked } from '../working/Worked.tsx';
import styles from './RatingPair.module.css';

/** The two ratings of a label side by side, each with the verdict on the present load. */
export function RatingPair({ ratings }: { readonly ratings: readonly RatingRow[] }) {
  const first = ratings.find(({ amounts }) => amounts.total.figure !== undefined);
  return (
    <dl className={styles.pair}>
      {ratings.map(({ key, label, total, each, boundBy, state, present, amounts }) => (
        <div key={key} data-state={state}>
          <dt>{label}</dt>
          <dd>
            <b>
              <Worked
                id={amounts.total.figure}
                text={total}
                of={`rated ${label}`}
                among={key !== first?.key}
              />
            </b>
            <span>{each === '–' ? '' : `${each} each`}</span>
            {boundBy !== '–' && <small>bounded by: {boundBy}</small>}
            <span className={styles.word}>{present}</span>
          </dd>
        </div>
      ))}
    </dl>
  );
}
