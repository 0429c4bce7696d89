import { memo } from 'react';
import type { FitReport } from '../../../report/bench/fitReport.ts';
import { ChartFrame } from '../../charts/ChartFrame.tsx';
import { ResidualsChart } from '../../charts/lazy.ts';
import columns from '../columns.module.css';
import { Remarks } from '../gaps/Remarks.tsx';
import { TableTwin } from '../TableTwin.tsx';
import styles from './Bench.module.css';

/** Fitted values, how they hang together, and every reading before and after. */
export const FitAnswer = memo(function FitAnswer({ report }: { readonly report: FitReport }) {
  const { residuals, twins, remarks } = report;
  return (
    <>
      <div className={columns.columns}>
        {residuals && twins.residuals && (
          <div>
            <ChartFrame caption={residuals.caption} table={twins.residuals} ownHeight>
              <ResidualsChart chart={residuals} />
            </ChartFrame>
            <p className={styles.key}>
              Ring: before the fit. Diamond: after it. Shaded: within the instrument.
            </p>
          </div>
        )}
        <div>
          {twins.values && <TableTwin table={twins.values} open />}
          {twins.correlation && <TableTwin table={twins.correlation} open />}
          {twins.readings && <TableTwin table={twins.readings} />}
          {twins.residuals && <TableTwin table={twins.residuals} />}
        </div>
      </div>
      <Remarks remarks={remarks} />
    </>
  );
});
