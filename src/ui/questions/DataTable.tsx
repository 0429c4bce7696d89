import type { TextTable } from '../../report/types.ts';
import { SaveRow } from '../takeOut/SaveRow.tsx';
import { Worked } from '../working/Worked.tsx';
import styles from './TableTwin.module.css';
import { Cells, Heads } from './tableParts.tsx';

/** A box that scrolls sideways has to be reached by the keyboard; one that does not is no stop on the way. */
export function reachWhileScrolling(box: HTMLElement | null) {
  if (box === null || typeof ResizeObserver === 'undefined') return;
  const observer = new ResizeObserver(() => {
    if (box.scrollWidth > box.clientWidth) box.tabIndex = 0;
    else box.removeAttribute('tabindex');
  });
  observer.observe(box);
  return () => observer.disconnect();
}

/** Rows with a key each: their own text, and how often it stood before. */
function numbered(rows: TextTable['rows']): [string, readonly string[]][] {
  const seen = new Map<string, number>();
  return rows.map((cells) => {
    const text = cells.join('|');
    const before = seen.get(text) ?? 0;
    seen.set(text, before + 1);
    return [`${text} ${before}`, cells];
  });
}

interface Props {
  readonly table: TextTable;
  /** Folded away, its numbers need not be buttons. */
  readonly isOpen?: boolean;
}

/** Rows of text; the first cell names its row, and a number with a working opens it. Below them, the way to save it. */
export function DataTable({ table, isOpen = true }: Props) {
  const { id, caption, columns, rows, amounts } = table;
  const first = amounts.flat().find((of) => of?.[0]?.figure !== undefined)?.[0];
  const cell = (text: string, row: number, column: number) => {
    const amount = amounts[row]?.[column]?.[0];
    if (!isOpen || amount?.figure === undefined) return text;
    const of = `${columns[column]?.head}, ${rows[row]?.[0]}`;
    return <Worked key={of} id={amount.figure} text={text} of={of} among={amount !== first} />;
  };
  return (
    <>
      <section className={styles.scroll} aria-label={caption} ref={reachWhileScrolling}>
        <table className={styles.table}>
          <thead>
            <tr>
              <Heads columns={columns} number={styles.number} />
            </tr>
          </thead>
          <tbody>
            {numbered(rows).map(([key, cells], r) => (
              <tr key={key}>
                <Cells
                  columns={columns}
                  number={styles.number}
                  cells={cells.map((text, c) => cell(text, r, c))}
                />
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <SaveRow id={id} caption={caption} table={table} />
    </>
  );
}
