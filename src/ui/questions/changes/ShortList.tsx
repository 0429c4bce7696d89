import { use, useRef } from 'react';
import { Button } from '../../kit/Button.tsx';
import { ChangesContext } from './ChangesContext.tsx';
import styles from './ShortList.module.css';
import { useFocusKept } from './useFocusKept.ts';
import { useTryChange } from './useTryChange.ts';

/** The best changes beside the limits: what they gain, what they ask, one press to try. */
export function ShortList() {
  const { report, fresh } = use(ChangesContext);
  const { tryIt } = useTryChange();
  const list = useRef<HTMLOListElement>(null);
  useFocusKept(list, report);
  if (report === null) return <div className={styles.place} />;
  const { best } = report;
  return (
    <section className={styles.place} aria-labelledby="change-first">
      <h3 id="change-first" className={styles.heading}>
        Change first
        <a href="#what-to-change-first">all changes</a>
      </h3>
      {best.length === 0 && <p className={styles.none}>{report.sentence}</p>}
      <ol className={styles.list} ref={list} tabIndex={-1} aria-label="The best changes">
        {best.map((row) => (
          <li key={row.key}>
            <span className={styles.does}>
              {row.does} <small>{row.detail}</small>
            </span>
            <b className={styles.gain}>{row.gain}</b>
            <small className={styles.costs}>{row.costs}</small>
            <Button
              className={styles.try ?? ''}
              disabled={!fresh}
              aria-label={`Try it: ${row.does}`}
              onClick={() => tryIt(row)}
            >
              Try it
            </Button>
          </li>
        ))}
      </ol>
    </section>
  );
}
