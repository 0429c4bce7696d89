import type { OwnEntry } from '../../model/shelf/entry.ts';
import type { ShelfRow } from '../../report/shelfRows.ts';
import { Button } from '../kit/Button.tsx';
import styles from './EntryDetail.module.css';

interface Props {
  readonly row: ShelfRow;
  readonly onEdit: (entry: OwnEntry) => void;
  readonly onRemove: (entry: OwnEntry) => void;
}

/** One entry: its values beside the present ones, where each comes from, and what to mind. */
export function EntryDetail({ row, onEdit, onRemove }: Props) {
  const { name, rows, note, sources, effect, own } = row;
  return (
    <section aria-label={name} className={styles.entry}>
      <h3>{name}</h3>
      <p id="shelf-effect" className={styles.effect}>
        {effect}
      </p>
      <dl className={styles.values}>
        {rows.map(({ key, label, value, instead, scatter }) => (
          <div key={key}>
            <dt>{label}</dt>
            <dd>
              <strong data-changes={instead !== null}>{value}</strong>
              {instead !== null && <span>, now {instead}</span>}
              {scatter !== '' && <small>{scatter}</small>}
            </dd>
          </div>
        ))}
      </dl>
      {note !== '' && <p>{note}</p>}
      <div className={styles.sources}>
        {sources.map((source) => (
          <p key={source}>{source}</p>
        ))}
      </div>
      {own !== null && (
        <div className={styles.own}>
          <Button onClick={() => onEdit(own)}>Change this entry…</Button>
          <Button onClick={() => onRemove(own)}>Take it off the shelf</Button>
        </div>
      )}
    </section>
  );
}
