import type { ChangeReport } from '../../report/types.ts';
import styles from './WhatChanged.module.css';

/** The last edit and what it did to the verdict; its place is always there, so that nothing below moves. */
export function WhatChanged({ change }: { readonly change: ChangeReport | null }) {
  return (
    <p className={styles.change}>
      {change === null ? (
        <span className={styles.idle}>Each edit shows here; what it did, below each figure.</span>
      ) : (
        <>
          <span className={styles.idle}>Last edit: </span>
          <b>{change.edit}</b>
          {change.verdict !== '' && <span className={styles.verdict}>{change.verdict}</span>}
        </>
      )}
    </p>
  );
}
