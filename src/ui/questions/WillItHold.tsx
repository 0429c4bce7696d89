import { limitsTable, loadTable } from '../../report/tables.ts';
import type { Headline } from '../../report/types.ts';
import { LimitList } from './LimitList.tsx';
import { QuestionSection } from './QuestionSection.tsx';
import { TableTwin } from './TableTwin.tsx';
import styles from './WillItHold.module.css';

export function WillItHold({ report }: { readonly report: Headline }) {
  const { verdict, ratings, limits, notes, load } = report;
  return (
    <QuestionSection id="will-it-hold" question="Will it hold?" sentence={verdict.sentence}>
      {verdict.reasons.length > 0 && (
        <ul className={styles.reasons}>
          {verdict.reasons.map((reason) => (
            <li key={reason}>{reason}</li>
          ))}
        </ul>
      )}
      {ratings && <p className={styles.ratings}>{ratings.sentence}</p>}
      {limits.length > 0 && <LimitList limits={limits} />}
      {notes.length > 0 && (
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
      )}
      <TableTwin table={limitsTable(report)} />
      {load && <TableTwin table={loadTable(report)} />}
    </QuestionSection>
  );
}
