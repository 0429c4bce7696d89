import type { LineChart } from '../../report/lineChart.ts';
import { lineChartTable } from '../../report/tables.ts';
import { ChartFrame } from '../charts/ChartFrame.tsx';
import { LinesChart } from '../charts/lazy.ts';
import { TableTwin } from './TableTwin.tsx';

/** A chart of lines and its table twin. */
export function LinesFigure({ chart, twin = true }: { readonly chart: LineChart; readonly twin?: boolean }) {
  return (
    <div>
      <ChartFrame caption={chart.caption}>
        <LinesChart chart={chart} />
      </ChartFrame>
      {twin && <TableTwin table={lineChartTable(chart)} />}
    </div>
  );
}
