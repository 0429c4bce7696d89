import type { ChangesReport } from '../../../report/changes/changesReport.ts';
import styles from './ChangeList.module.css';
import { type ChangeActions, gainStyle, Take } from './ChangeList.tsx';

interface Props extends ChangeActions {
  readonly report: ChangesReport;
}

/** The best changes at once, and whether they add up. */
export function TogetherList({ report, ...actions }: Props) {
  const { together } = report;
  if (together.length === 0) return null;
  return (
    <ul className={`${styles.list} ${styles.together}`} aria-label="The best changes at once">
      {together.map((row) => (
        <li key={row.key}>
          <span className={styles.does}>
            <b>{row.does}</b> <span className={styles.detail}>{row.compared}</span>
          </span>
          <span className={styles.bar} aria-hidden="true">
            <span style={gainStyle(row, report)} />
          </span>
          <span className={styles.gain}>{row.gain}</span>
          <span className={styles.follows}>
            {row.sum === '–' ? '' : `one by one ${row.sum} · `}
            {row.word}
          </span>
          <Take row={row} {...actions} />
        </li>
      ))}
    </ul>
  );
}
