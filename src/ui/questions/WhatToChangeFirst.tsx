import { use, useState } from 'react';
import { SameWay } from '../working/SameWay.tsx';
import styles from './changes/ChangeList.module.css';
import { ChangeList, type Takable } from './changes/ChangeList.tsx';
import { ChangesContext } from './changes/ChangesContext.tsx';
import { TogetherList } from './changes/TogetherList.tsx';
import { useTryChange } from './changes/useTryChange.ts';
import { QuestionSection } from './QuestionSection.tsx';
import { TableTwin } from './TableTwin.tsx';

/** So many stand open; the rest gains little and is folded. */
const mostOpen = 8;

/** Everything that could be done to the design, ranked by the kelvin it gains, each one press from the bench. */
export function WhatToChangeFirst() {
  const { report, fresh, fault } = use(ChangesContext);
  const { tryIt, asVariant } = useTryChange();
  const [done, setDone] = useState('');
  if (report === null) return <QuestionSection id="what-to-change-first" sentence={waiting(fault)} />;

  const actions = {
    fresh,
    onTry: (row: Takable) => {
      tryIt(row);
      setDone(`On the bench: ${row.edit}. It ${row.word}. Undo takes it back.`);
    },
    onVariant:
      asVariant &&
      ((row: Takable) => {
        void asVariant(row).then((name) =>
          setDone(`Kept as it was. On the bench is now its variant “${name}”. It ${row.word}.`),
        );
      }),
  };
  const { rows, tables, remarks } = report;
  const [open, folded] = [rows.slice(0, mostOpen), rows.slice(mostOpen)];
  return (
    <QuestionSection id="what-to-change-first" sentence={report.sentence}>
      <div className={fresh ? undefined : styles.stale}>
        <ChangeList report={report} rows={open} label="Changes, most kelvin first" {...actions} />
        {folded.length > 0 && (
          <details className={styles.more}>
            <summary>{folded.length} more that gain less</summary>
            <ChangeList report={report} rows={folded} label="Changes that gain less" {...actions} />
          </details>
        )}
        <TogetherList report={report} {...actions} />
      </div>
      <p role="status" className={styles.status}>
        {done}
      </p>
      {tables.map((table) => (
        <TableTwin key={table.id} table={table} />
      ))}
      <p className={styles.remarks}>{remarks.join(' ')}</p>
      <SameWay />
    </QuestionSection>
  );
}

function waiting(fault: string | null): string {
  return fault === null ? 'Being computed …' : `This could not be computed: ${fault}.`;
}
