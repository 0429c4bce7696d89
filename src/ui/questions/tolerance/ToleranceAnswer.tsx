import type { ToleranceReport } from '../../../report/tolerance/toleranceReport.ts';
import { ChartFrame } from '../../charts/ChartFrame.tsx';
import { HistogramChart } from '../../charts/lazy.ts';
import columns from '../columns.module.css';
import { NamedBars } from '../NamedBars.tsx';
import { TableTwin } from '../TableTwin.tsx';
import styles from './WhatIfPartsVary.module.css';

/** Pictures and tables of boxes drawn, and how it was done. */
export function ToleranceAnswer({
  report: { influences, twins, remarks },
  chart,
}: {
  readonly report: ToleranceReport;
  /** Not every estimate has one of its own. */
  readonly chart: ToleranceReport['chart'];
}) {
  return (
    <>
      <div className={columns.columns}>
        {chart && twins.histogram && (
          <div>
            <ChartFrame caption={chart.caption} table={twins.histogram}>
              <HistogramChart chart={chart} />
            </ChartFrame>
            <p className={styles.key}>
              Dotted: so many of a hundred boxes lie to the left. Hatched: boxes in which some limit is
              passed.
            </p>
            <TableTwin table={twins.histogram} />
          </div>
        )}
        <div>
          {influences.length > 0 && (
            <>
              <NamedBars
                caption="What matters most: share of how the film’s margin varies, and what more of it does"
                rows={influences}
                table={twins.influences}
              />
              <TableTwin table={twins.influences} />
            </>
          )}
        </div>
      </div>
      <div className={columns.columns}>
        <TableTwin table={twins.figures} open />
        <div>
          <TableTwin table={twins.failing} open />
          <TableTwin table={twins.spreads} />
          <details className={styles.how}>
            <summary>How the boxes were drawn, and what that rests on</summary>
            <ul>
              {remarks.map((remark) => (
                <li key={remark}>{remark}</li>
              ))}
            </ul>
          </details>
        </div>
      </div>
    </>
  );
}
