import { type ReactNode, Suspense, useRef } from 'react';
import type { TextTable } from '../../report/types.ts';
import { SaveRow } from '../takeOut/SaveRow.tsx';
import styles from './ChartFrame.module.css';
import { useWhileSeen } from './useWhileSeen.ts';

/** Keeps the chart's place while it loads, so that nothing below it jumps; below it, the ways to save it. */
export function ChartFrame({
  caption,
  table,
  ownHeight = false,
  children,
}: {
  readonly caption: string;
  /** The chart's numbers. */
  readonly table: TextTable;
  /** The chart is as high as it makes itself. */
  readonly ownHeight?: boolean;
  readonly children: ReactNode;
}) {
  const place = useRef<HTMLElement>(null);
  const chart = useWhileSeen(children, place);
  return (
    <figure ref={place} className={styles.frame}>
      <figcaption>{caption}</figcaption>
      <div className={ownHeight ? styles.own : styles.chart}>
        <Suspense fallback={null}>{chart}</Suspense>
      </div>
      <SaveRow id={table.id} caption={caption} picture table={table} />
    </figure>
  );
}
