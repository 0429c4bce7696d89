import type { ReactNode } from 'react';
import styles from './Disclosure.module.css';

interface Props {
  readonly summary: ReactNode;
  readonly open?: boolean;
  readonly children: ReactNode;
}

export function Disclosure({ summary, open = false, children }: Props) {
  return (
    <details className={styles.disclosure} open={open}>
      <summary>{summary}</summary>
      {children}
    </details>
  );
}
