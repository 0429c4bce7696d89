import { useDesign } from '../bench/DesignContext.ts';
import styles from './rows.module.css';

interface Props {
  readonly id: string;
  /** Start of the places that the table edits. */
  readonly list: string;
  /** Words for a row number from 0. */
  readonly nameRow: (row: number) => string;
  readonly help: string;
}

/** The one place under a table for its help or for the first thing wrong in it. */
export function RowsNote({ id, list, nameRow, help }: Props) {
  const problem = useDesign(({ problems }) =>
    problems.find(({ path }) => path === list || path.startsWith(`${list}[`)),
  );
  const row = /\[(\d+)\]/.exec(problem?.path.slice(list.length) ?? '')?.[1];
  return (
    <p id={id} className={styles.note} data-wrong={problem !== undefined}>
      {problem === undefined
        ? help
        : `${row === undefined ? '' : `${nameRow(Number(row))}: `}${problem.reason}`}
    </p>
  );
}
