import type { LineChart } from '../../report/lineChart.ts';
import { lineChartTable } from '../../report/tables.ts';
import type { TextTable } from '../../report/types.ts';
import { ChartFrame } from '../charts/ChartFrame.tsx';
import { LinesChart } from '../charts/lazy.ts';
import { TableTwin } from './TableTwin.tsx';

/** A chart of lines and its table twin: the points of its lines, or another table where those are too many to read. */
export function LinesFigure({
  chart,
  table = lineChartTable(chart),
}: {
  readonly chart: LineChart;
  readonly table?: TextTable;
}) {
  return (
    <div>
      <ChartFrame caption={chart.caption} table={table}>
        <LinesChart chart={chart} />
      </ChartFrame>
      <TableTwin table={table} />
    </div>
  );
}
