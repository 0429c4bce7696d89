import type { RatingRow } from '../../report/types.ts';
import styles from './RatingPair.module.css';

/** The two ratings of a label side by side, each with the verdict on the present load. */
export function RatingPair({ ratings }: { readonly ratings: readonly RatingRow[] }) {
  return (
    <dl className={styles.pair}>
      {ratings.map(({ key, label, total, each, boundBy, state, present }) => (
        <div key={key} data-state={state}>
          <dt>{label}</dt>
          <dd>
            <b>{total}</b>
            <span>{each === '–' ? '' : `${each} each`}</span>
            {boundBy !== '–' && <small>bounded by: {boundBy}</small>}
            <span className={styles.word}>{present}</span>
          </dd>
        </div>
      ))}
    </dl>
  );
}
