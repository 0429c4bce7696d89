import { use } from 'react';
import { ChangesContext } from './ChangesContext.tsx';
import styles from './ShortList.module.css';

/** The best change in one line above the limits, in view with them; it leads to the others. */
export function FirstChange() {
  const { report } = use(ChangesContext);
  if (report === null) return null;
  return (
    <p className={styles.first}>
      <a href="#change-first">{report.first}</a>
    </p>
  );
}
