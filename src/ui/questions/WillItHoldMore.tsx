import { limitsTable, loadTable } from '../../report/tables.ts';
import type { Report } from '../../report/types.ts';
import { LinesFigure } from './LinesFigure.tsx';
import { NoteList } from './NoteList.tsx';
import { TableTwin } from './TableTwin.tsx';
import styles from './WillItHold.module.css';

/** What stands under the limits and may come a moment later: notes, the load in pulses, derating, tables. */
export function WillItHoldMore({ report }: { readonly report: Report }) {
  const { notes, derating, pulse, load } = report;
  return (
    <>
      {report.limits.length > 0 && (
        <p className={styles.hint}>
          Any number of the answer opens its working, here and in the tables below.
        </p>
      )}
      <NoteList notes={notes} />
      {pulse && (
        <>
          <p className={styles.more}>{pulse.sentence}</p>
          <LinesFigure chart={pulse.chart} />
        </>
      )}
      <TableTwin table={limitsTable(report)} />
      {load && <TableTwin table={loadTable(report)} />}
      {derating && (
        <>
          {derating.sentence !== '' && <p className={styles.more}>{derating.sentence}</p>}
          <LinesFigure chart={derating.overAmbient} />
          <details className={styles.further}>
            <summary>Over altitude, and over the fan’s supply</summary>
            <LinesFigure chart={derating.overAltitude} />
            <LinesFigure chart={derating.overSupply} />
          </details>
        </>
      )}
    </>
  );
}
