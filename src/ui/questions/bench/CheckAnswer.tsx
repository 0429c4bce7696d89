import { memo } from 'react';
import type { CheckReport } from '../../../report/bench/checkReport.ts';
import { residualTable } from '../../../report/bench/residualChart.ts';
import { ChartFrame } from '../../charts/ChartFrame.tsx';
import { ResidualsChart } from '../../charts/lazy.ts';
import columns from '../columns.module.css';
import { Remarks } from '../gaps/Remarks.tsx';
import { LinesFigure } from '../LinesFigure.tsx';
import { TableTwin } from '../TableTwin.tsx';
import styles from './Bench.module.css';
import { CheckTable } from './CheckTable.tsx';

interface Props {
  readonly report: CheckReport;
  readonly fresh: boolean;
}

/** How far every reading is off, as a picture and as a table, and the warm-up where one was read. */
export const CheckAnswer = memo(function CheckAnswer({ report, fresh }: Props) {
  const { residuals, warmUp, remarks } = report;
  const twin = residuals && residualTable(residuals);
  return (
    <div className={styles.answer} aria-busy={!fresh}>
      <div className={columns.columns}>
        {residuals && twin && (
          <div>
            <ChartFrame caption={residuals.caption} table={twin} ownHeight>
              <ResidualsChart chart={residuals} />
            </ChartFrame>
            <p className={styles.key}>Shaded: within the instrument. To the right: more than computed.</p>
            <TableTwin table={twin} />
          </div>
        )}
        {warmUp && <LinesFigure chart={warmUp.chart} table={warmUp.table} />}
      </div>
      <CheckTable report={report} />
      <Remarks remarks={remarks} />
    </div>
  );
});
