import { driftTable, ladderTable, positionsTable, sinksTable } from '../../report/tables.ts';
import type { Report } from '../../report/types.ts';
import { ChartFrame } from '../charts/ChartFrame.tsx';
import { LadderChart, PositionsChart } from '../charts/lazy.ts';
import { Told } from '../working/Told.tsx';
import styles from './columns.module.css';
import { QuestionSection } from './QuestionSection.tsx';
import { TableTwin } from './TableTwin.tsx';

export function WhereDoTheKelvinsGo({ report }: { readonly report: Report }) {
  const { heat, verdict, drift } = report;
  if (!heat) return <QuestionSection id="where-do-the-kelvins-go" sentence={verdict.sentence} />;
  return (
    <QuestionSection id="where-do-the-kelvins-go" sentence={heat.sentence} number={heat.number}>
      <div className={styles.columns}>
        <div>
          <ChartFrame caption="From the room to the hottest film" table={ladderTable(report)}>
            <LadderChart ladder={heat.ladder} />
          </ChartFrame>
          <TableTwin table={ladderTable(report)} />
        </div>
        <div>
          <ChartFrame
            caption="Every resistor: ● film, □ joint, – plate beside it"
            table={positionsTable(report)}
          >
            <PositionsChart heat={heat} />
          </ChartFrame>
          <TableTwin table={positionsTable(report)} />
          <TableTwin table={sinksTable(report)} />
        </div>
      </div>
      {drift && (
        <>
          <h3>What the kelvins do to the resistances</h3>
          <p>
            <Told sentence={drift.sentence} number={drift.number} /> {drift.warmUp}
          </p>
          <TableTwin table={driftTable(report)} />
        </>
      )}
    </QuestionSection>
  );
}
