import styles from './WhichGap.module.css';

/** What stands behind a sentence, one thought each. */
export function Remarks({ remarks }: { readonly remarks: readonly string[] }) {
  if (remarks.length === 0) return null;
  return (
    <ul className={styles.remarks}>
      {remarks.map((remark) => (
        <li key={remark}>{remark}</li>
      ))}
    </ul>
  );
}
