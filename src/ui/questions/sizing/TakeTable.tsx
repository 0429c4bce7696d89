import type { TextTable } from '../../../report/types.ts';
import { Button } from '../../kit/Button.tsx';
import { SaveRow } from '../../takeOut/SaveRow.tsx';
import { reachWhileScrolling } from '../DataTable.tsx';
import { Cells, Heads } from '../tableParts.tsx';
import styles from './TakeTable.module.css';
import type { Edit } from './useTake.ts';

interface Props {
  readonly table: TextTable;
  /** One for each row of the table. */
  readonly takes: readonly { readonly key: string; readonly edit: Edit; readonly name: string }[];
  readonly fresh: boolean;
  readonly onTake: (edit: Edit, name: string) => void;
  /** Under a heading that says the caption already. */
  readonly bare?: boolean;
}

/** A table whose rows can each be put into the design. */
export function TakeTable({ table, takes, fresh, onTake, bare = false }: Props) {
  const { id, caption, columns, rows } = table;
  if (rows.length === 0) return null;
  return (
    <div className={bare ? undefined : styles.whole}>
      {!bare && <p className={styles.caption}>{caption}</p>}
      <section className={styles.scroll} aria-label={caption} ref={reachWhileScrolling}>
        <table className={styles.table} aria-busy={!fresh}>
          <thead>
            <tr>
              <th scope="col">
                <span className="unseen">Take</span>
              </th>
              <Heads columns={columns} number={styles.number} />
            </tr>
          </thead>
          <tbody>
            {takes.map(({ key, edit, name }, row) => (
              <tr key={key}>
                <td>
                  <Button
                    className={styles.take ?? ''}
                    aria-label={`Take: ${name}`}
                    aria-disabled={!fresh}
                    onClick={() => fresh && onTake(edit, name)}
                  >
                    Take
                  </Button>
                </td>
                <Cells columns={columns} number={styles.number} cells={rows[row] ?? []} />
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <SaveRow id={id} caption={caption} table={table} />
    </div>
  );
}
