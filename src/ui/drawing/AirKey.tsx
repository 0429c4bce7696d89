import type { Headline } from '../../report/types.ts';
import styles from './AirKey.module.css';

/** What the ribbons and the tint mean, in words with their numbers. */
export function AirKey({ report }: { readonly report: Headline }) {
  const { air, heat, drawing } = report;
  return (
    <div className={styles.key}>
      {air !== null && (
        <ul aria-label="Streams of air">
          {air.shares.map(({ kind, label, percent }) => (
            <li key={kind}>
              <span className={styles.swatch} data-kind={kind} aria-hidden="true" />
              <b>{percent}</b> {label}
            </li>
          ))}
        </ul>
      )}
      {heat !== null && (
        <p className={styles.scale}>
          <span>{heat.ladder.rungs[0]?.top} room</span>
          <span className={styles.ramp} aria-hidden="true" />
          <span>{heat.ladder.limitText}</span>
        </p>
      )}
      <p>{drawing.caption}</p>
    </div>
  );
}
