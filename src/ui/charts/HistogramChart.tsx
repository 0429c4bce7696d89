import { Bar, BarChart, CartesianGrid, ReferenceLine, Tooltip, XAxis, YAxis } from 'recharts';
import type { HistogramChart as Chart } from '../../report/tolerance/histogramChart.ts';
import { axis, below, frame, grid, tooltip, upright } from './axes.ts';
import { histogramRows } from './histogramRows.ts';
import { palette } from './palette.ts';
import { shortNumber, tickText } from './rows.ts';

const hatch = 'histogram-hatch';

/** How often each value comes up: boxes that hold, and under them hatched those that do not. */
export default function HistogramChart({ chart }: { readonly chart: Chart }) {
  const { xTicks, yTicks, xUnit } = chart;
  return (
    <BarChart
      {...frame}
      data={histogramRows(chart)}
      margin={{ top: 30, right: 16, bottom: 20, left: 8 }}
      barCategoryGap={1}
      title={chart.spoken}
    >
      <defs>
        <pattern id={hatch} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path d="M0 0V6" stroke={palette.ink} strokeWidth={2} />
        </pattern>
      </defs>
      <CartesianGrid vertical={false} {...grid} />
      <XAxis
        dataKey="middle"
        type="number"
        domain={[xTicks[0] ?? 0, xTicks.at(-1) ?? 1]}
        ticks={[...xTicks]}
        {...axis}
        tickFormatter={tickText}
        label={below(`${chart.xLabel}, ${xUnit}`)}
      />
      <YAxis {...upright(yTicks, chart.yLabel)} domain={[0, yTicks.at(-1) ?? 1]} />
      <Tooltip
        {...tooltip}
        formatter={(value) => `${shortNumber(value)} of 100`}
        labelFormatter={(_, [point]) => (point ? `${point.payload.range} ${xUnit}` : '')}
      />
      <Bar
        name="do not hold"
        dataKey="failing"
        stackId="boxes"
        fill={`url(#${hatch})`}
        stroke={palette.ink}
        strokeWidth={1}
        isAnimationActive={false}
      />
      <Bar name="hold" dataKey="holding" stackId="boxes" fill={palette.air} isAnimationActive={false} />
      {chart.marks.map(({ label, x }) => (
        <ReferenceLine
          key={label}
          x={x}
          stroke={palette.ink}
          strokeDasharray="2 3"
          label={{ value: label, position: 'top', fill: palette.soft, fontSize: 12 }}
        />
      ))}
    </BarChart>
  );
}
