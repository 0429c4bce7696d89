import {
  curvesTable,
  fansTable,
  intersectionsTable,
  passagesTable,
  sharesTable,
  stagesTable,
} from '../../report/tables.ts';
import type { Report } from '../../report/types.ts';
import { ChartFrame } from '../charts/ChartFrame.tsx';
import { FanCurveChart } from '../charts/lazy.ts';
import styles from './columns.module.css';
import { NamedBars } from './NamedBars.tsx';
import { QuestionSection } from './QuestionSection.tsx';
import { ShareBar } from './ShareBar.tsx';
import { TableTwin } from './TableTwin.tsx';

export function WhereDoesTheAirGo({ report }: { readonly report: Report }) {
  const { air, verdict } = report;
  if (!air) return <QuestionSection id="where-does-the-air-go" sentence={verdict.sentence} />;
  return (
    <QuestionSection id="where-does-the-air-go" sentence={air.sentence} number={air.number}>
      <ShareBar shares={air.shares} table={sharesTable(report)} />
      <TableTwin table={sharesTable(report)} />
      <div className={styles.columns}>
        <div>
          {air.chart && (
            <ChartFrame caption="Fan against box" table={curvesTable(report)}>
              <FanCurveChart chart={air.chart} />
            </ChartFrame>
          )}
          {air.sound !== '' && <p>{air.sound}</p>}
          <TableTwin table={fansTable(report)} />
          <TableTwin table={intersectionsTable(report)} />
          <TableTwin table={curvesTable(report)} />
        </div>
        <div>
          <NamedBars
            caption="What takes the fan’s pressure"
            table={stagesTable(report)}
            rows={air.stages.map(({ key, label, dp, percent, share, amounts }) => ({
              key,
              label,
              value: dp,
              aside: percent,
              share,
              figure: amounts.dp.figure,
            }))}
          />
          <TableTwin table={stagesTable(report)} />
          <TableTwin table={passagesTable(report)} />
        </div>
      </div>
    </QuestionSection>
  );
}
