import type { SizeRow } from '../../../report/sizing/sizingRows.ts';
import { Button } from '../../kit/Button.tsx';
import styles from './SizeList.module.css';
import type { Edit } from './useTake.ts';

interface Props {
  readonly rows: readonly SizeRow[];
  /** Whether they belong to the design as it is; only then can they be taken. */
  readonly fresh: boolean;
  readonly onTake: (edit: Edit, name: string) => void;
}

/** How far each measure may go: what it is now, where it ends, and what ends it there; then what does not do by itself. */
export function SizeList({ rows, fresh, onTake }: Props) {
  const reached = rows.filter(({ state }) => state !== 'out');
  const missed = rows.filter(({ state }) => state === 'out');
  return (
    <div aria-busy={!fresh}>
      <Group rows={reached} fresh={fresh} onTake={onTake} />
      {missed.length > 0 && (
        <>
          <h3 className={styles.missed}>
            Out of reach by itself: the best there is, and what stands in the way
          </h3>
          <Group rows={missed} fresh={fresh} onTake={onTake} />
        </>
      )}
    </div>
  );
}

function Group({ rows, fresh, onTake }: Props) {
  if (rows.length === 0) return null;
  return (
    <ul className={styles.list}>
      {rows.map(({ key, label, lead, value, now, room, stop, sound, values, edit }) => (
        <li key={key}>
          <span className={styles.label}>{label}</span>
          <span className={styles.value}>
            <span className={styles.lead}>{lead}</span> <b>{value}</b>
            {key === 'fanSupply' && <span className={styles.lead}>, {sound}</span>}
          </span>
          {room !== '–' && (
            <Button
              aria-label={`Take: ${edit}`}
              aria-disabled={!fresh}
              onClick={() => fresh && onTake(values, edit)}
            >
              Take
            </Button>
          )}
          <small>
            Now {now}
            {room !== '–' && ` (${room})`}. {stop}.
          </small>
        </li>
      ))}
    </ul>
  );
}
