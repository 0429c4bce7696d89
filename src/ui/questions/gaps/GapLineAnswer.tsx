import { memo, useState } from 'react';
import type { GapReport } from '../../../report/gaps/gapReport.ts';
import { lineChartTable } from '../../../report/tables.ts';
import { ChartFrame } from '../../charts/ChartFrame.tsx';
import { GapChart, LinesChart } from '../../charts/lazy.ts';
import { Select } from '../../kit/Select.tsx';
import columns from '../columns.module.css';
import { GapRows } from './GapRows.tsx';
import { Remarks } from './Remarks.tsx';
import type { TakeGap } from './useTakeGap.ts';
import styles from './WhichGap.module.css';

interface Props {
  readonly report: GapReport;
  readonly onTake: TakeGap;
}

/** One gap: the film over it, another figure of the reader's choice beside it, and every value as a row. Nothing of it is drawn anew for a key. */
export const GapLineAnswer = memo(function GapLineAnswer({ report, onTake }: Props) {
  const { chart, figures, tables, remarks } = report;
  const [chosen, setChosen] = useState(figures[0]?.id ?? '');
  const figure = figures.find(({ id }) => id === chosen) ?? figures[0];
  return (
    <>
      {chart && tables[0] && figure && (
        <div className={columns.columns}>
          <div className={styles.film}>
            <ChartFrame caption={chart.caption} table={tables[0]}>
              <GapChart chart={chart} />
            </ChartFrame>
          </div>
          <div className={styles.other}>
            <div className={styles.choice}>
              <Select
                aria-label="Beside it"
                value={figure.id}
                options={figures.map(({ id, caption }) => ({ value: id, label: caption }))}
                onChoose={setChosen}
              />
            </div>
            <ChartFrame caption={figure.caption} table={lineChartTable(figure)}>
              <LinesChart chart={figure} />
            </ChartFrame>
          </div>
        </div>
      )}
      <Remarks remarks={remarks} />
      <GapRows report={report} onTake={onTake} />
    </>
  );
});
