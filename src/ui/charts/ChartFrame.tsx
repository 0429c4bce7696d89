import { type ReactNode, Suspense } from 'react';
import styles from './ChartFrame.module.css';

/** Keeps the chart's place while it loads, so that nothing below it jumps. */
export function ChartFrame({
  caption,
  children,
}: {
  readonly caption: string;
  readonly children: ReactNode;
}) {
  return (
    <figure className={styles.frame}>
      <figcaption>{caption}</figcaption>
      <div className={styles.chart}>
        <Suspense fallback={null}>{children}</Suspense>
      </div>
    </figure>
  );
}
