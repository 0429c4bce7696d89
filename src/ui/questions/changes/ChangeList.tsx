import { type CSSProperties, useRef } from 'react';
import type { ChangeRow } from '../../../report/changes/changeRow.ts';
import type { ChangesReport } from '../../../report/changes/changesReport.ts';
import type { TogetherRow } from '../../../report/changes/togetherRow.ts';
import { Button } from '../../kit/Button.tsx';
import { barStyle } from '../fillStyle.ts';
import styles from './ChangeList.module.css';
import { useFocusKept } from './useFocusKept.ts';

/** What can be done with a row. */
export interface ChangeActions {
  readonly fresh: boolean;
  readonly onTry: (row: Takable) => void;
  readonly onVariant: ((row: Takable) => void) | null;
}

export type Takable = Pick<ChangeRow, 'does' | 'values' | 'edit' | 'variant' | 'word'>;

interface Props extends ChangeActions {
  readonly report: ChangesReport;
  readonly rows: readonly ChangeRow[];
  readonly label: string;
}

/** Ranked changes: a bar for the kelvin, words for all else, two ways to take each. */
export function ChangeList({ report, rows, label, ...actions }: Props) {
  const list = useRef<HTMLOListElement>(null);
  useFocusKept(list, report);
  return (
    <ol className={styles.list} ref={list} tabIndex={-1} aria-label={label}>
      {rows.map((row) => (
        <li key={row.key} data-state={row.state}>
          <span className={styles.does}>
            <b>{row.does}</b> <span className={styles.detail}>{row.detail}</span>
          </span>
          <span className={styles.bar} aria-hidden="true">
            <span style={gainStyle(row, report)} />
          </span>
          <span className={styles.gain}>{row.gain}</span>
          <span className={styles.follows}>{followsOf(row, report)}</span>
          <Take row={row} {...actions} />
        </li>
      ))}
    </ol>
  );
}

function followsOf(row: ChangeRow, { hasOtherFilm }: ChangesReport): string {
  return [
    row.costs,
    hasOtherFilm && row.film !== row.gain ? `${row.film} at the hottest film` : '',
    row.sound === '–' ? '' : `sound ${row.sound}`,
    row.mind,
  ]
    .filter((part) => part !== '')
    .join(' · ');
}

/** Against the most that any change of the box gains; less load may gain more, and fills its bar. */
export function gainStyle(row: ChangeRow | TogetherRow, { rows, together }: ChangesReport): CSSProperties {
  const gainOf = ({ amounts }: ChangeRow | TogetherRow) => amounts.gain.value ?? 0;
  const largest = Math.max(...[...rows.filter(({ isLast }) => !isLast), ...together].map(gainOf));
  return barStyle(Math.min(gainOf(row), largest), largest);
}

/** Both ways to take a change, named for what they take. */
export function Take({ row, fresh, onTry, onVariant }: ChangeActions & { readonly row: Takable }) {
  return (
    <span className={styles.take}>
      <Button disabled={!fresh} aria-label={`Try it: ${row.does}`} onClick={() => onTry(row)}>
        Try it
      </Button>
      {onVariant !== null && (
        <Button disabled={!fresh} aria-label={`As a variant: ${row.does}`} onClick={() => onVariant(row)}>
          As a variant
        </Button>
      )}
    </span>
  );
}
