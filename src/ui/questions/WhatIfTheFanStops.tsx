import { fanStopTable, ratingsTable, reachedTable } from '../../report/tables.ts';
import type { Report } from '../../report/types.ts';
import styles from './columns.module.css';
import { LinesFigure } from './LinesFigure.tsx';
import { NoteList } from './NoteList.tsx';
import { QuestionSection } from './QuestionSection.tsx';
import { RatingPair } from './RatingPair.tsx';
import { TableTwin } from './TableTwin.tsx';

export function WhatIfTheFanStops({ report }: { readonly report: Report }) {
  const { fanStop } = report;
  return (
    <QuestionSection id="what-if-the-fan-stops" sentence={fanStop.sentence} number={fanStop.number}>
      <RatingPair ratings={fanStop.ratings} />
      {fanStop.label !== '' && <p>{fanStop.label}</p>}
      <TableTwin table={ratingsTable(report)} />
      <div className={styles.columns}>
        {fanStop.chart && <LinesFigure chart={fanStop.chart} table={fanStopTable(report)} />}
        <div>
          <TableTwin table={reachedTable(report)} open />
          <NoteList notes={fanStop.notes} />
        </div>
      </div>
    </QuestionSection>
  );
}
