import type { TextTable } from '../../report/types.ts';
import type { FigureId } from '../../report/working/types.ts';
import { SaveRow } from '../takeOut/SaveRow.tsx';
import { Worked } from '../working/Worked.tsx';
import { barStyle } from './fillStyle.ts';
import styles from './NamedBars.module.css';

interface Bar {
  readonly key: string;
  readonly label: string;
  readonly value: string;
  readonly aside: string;
  readonly share: number;
  /** Where the working of the value is found. */
  readonly figure?: FigureId | undefined;
}

/** A list whose rows carry a bar each; it reads as a table without its bars. */
export function NamedBars({
  caption,
  rows,
  table,
}: {
  readonly caption: string;
  readonly rows: readonly Bar[];
  /** Their numbers. */
  readonly table: TextTable;
}) {
  const first = rows.find(({ figure }) => figure !== undefined);
  const largest = Math.max(...rows.map((row) => row.share));
  return (
    <figure className={styles.figure}>
      <figcaption>{caption}</figcaption>
      <ul>
        {rows.map(({ key, label, value, aside, share, figure }) => (
          <li key={key}>
            <span>{label}</span>
            <span className={styles.bar} aria-hidden="true">
              <span style={barStyle(share, largest)} />
            </span>
            <span className={styles.number}>
              <Worked id={figure} text={value} of={label} among={key !== first?.key} />
            </span>
            <span className={styles.number}>{aside}</span>
          </li>
        ))}
      </ul>
      <SaveRow id={table.id} caption={caption} picture table={table} />
    </figure>
  );
}
