import type { Headline } from '../../report/types.ts';
import styles from './AirKey.module.css';

/** What the ribbons and the tint mean, in words with their numbers. */
export function AirKey({ report }: { readonly report: Headline }) {
  const { key, drawing } = report;
  return (
    <div className={styles.key}>
      {key !== null && (
        <ul aria-label="Streams of air">
          {key.shares.map(({ kind, label, percent }) => (
            <li key={kind}>
              <span className={styles.swatch} data-kind={kind} aria-hidden="true" />
              <b>{percent}</b> {label}
            </li>
          ))}
        </ul>
      )}
      {key !== null && (
        <p className={styles.scale}>
          <span>{key.coldest}</span>
          <span className={styles.ramp} aria-hidden="true" />
          <span>{key.hottest}</span>
        </p>
      )}
      <p>
        {drawing.caption} {drawing.underlined}
      </p>
    </div>
  );
}
