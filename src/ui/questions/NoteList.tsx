import type { NoteRow } from '../../report/types.ts';
import styles from './WillItHold.module.css';

/** What limits trust in an answer, gravest first; nothing where nothing does. */
export function NoteList({ notes }: { readonly notes: readonly NoteRow[] }) {
  if (notes.length === 0) return null;
  return (
    <>
      <h3 className={styles.small}>Notes</h3>
      <ul className={styles.notes}>
        {notes.map((note) => (
          <li key={note.text} data-severity={note.severity}>
            <b>{note.severityWord}.</b> {note.text}
          </li>
        ))}
      </ul>
    </>
  );
}
