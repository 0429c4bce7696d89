import type { EvidenceChoice, EvidenceReport } from '../../../report/evidence/evidenceReport.ts';
import { ChartFrame } from '../../charts/ChartFrame.tsx';
import { EvidenceChart } from '../../charts/lazy.ts';
import columns from '../columns.module.css';
import { DataTable } from '../DataTable.tsx';
import { Remarks } from '../gaps/Remarks.tsx';
import styles from './Evidence.module.css';
import { EvidenceForm } from './EvidenceForm.tsx';
import { OpenedTable } from './OpenedTable.tsx';

interface Props {
  readonly report: EvidenceReport;
  readonly choice: EvidenceChoice;
  readonly onChoose: (choice: EvidenceChoice) => void;
}

/** Totals, what stands unchecked, and the checks of a choice as pictures and tables. */
export function EvidenceAnswer({ report, choice, onChoose }: Props) {
  const [kinds, ...more] = report.tables;
  return (
    <>
      <Remarks remarks={report.remarks} />
      {kinds && <DataTable table={kinds} />}
      {more.map((table) => (
        <OpenedTable key={table.id} summary={`Table: ${table.caption}`} table={table} />
      ))}
      <h3>Check by check</h3>
      <EvidenceForm report={report} choice={choice} onChoose={onChoose} />
      <p role="status" className={styles.shown}>
        {report.shown}
      </p>
      <div className={columns.columns}>
        {report.charts.map((chart) => (
          <ChartFrame
            key={chart.id}
            caption={chart.caption}
            table={{ ...report.twin, id: chart.id }}
            ownHeight
          >
            <EvidenceChart chart={chart} />
          </ChartFrame>
        ))}
      </div>
      {report.sections.map(({ id, heading, remark, table }) => (
        <OpenedTable key={id} summary={heading} remark={remark} table={table} />
      ))}
    </>
  );
}
