import { CartesianGrid, Line, LineChart, ReferenceDot, ReferenceLine, Tooltip, XAxis, YAxis } from 'recharts';
import type { LineChart as Chart, LineStyle } from '../../report/lineChart.ts';
import { axis, below, frame, grid, levelLabel, reading, upright } from './axes.ts';
import { lineEnds, lineRows, placedLevels } from './lineRows.ts';
import { MarkLabel } from './MarkLabel.tsx';
import { palette } from './palette.ts';
import { shortNumber, tickText } from './rows.ts';

const dashes: Readonly<Record<LineStyle, string>> = {
  solid: '',
  dashed: '8 4',
  dotted: '2 3',
  dashDot: '8 3 2 3',
};

/** Several lines over one axis, told apart by dashes and by the name at their end; levels carry the dashes of their line. */
export default function LinesChart({ chart }: { readonly chart: Chart }) {
  const low = chart.yTicks[0] ?? 0;
  const high = chart.yTicks.at(-1) ?? 1;
  const end = chart.xTicks.at(-1) ?? 1;
  const leftFrom = 0.55 * end;
  const farUntil = 0.14 * end;
  return (
    <LineChart
      {...frame}
      data={lineRows(chart)}
      margin={{ top: 30, right: 72, bottom: 20, left: 8 }}
      title={chart.spoken}
    >
      <CartesianGrid {...grid} />
      <XAxis
        dataKey="x"
        type="number"
        domain={[chart.xTicks[0] ?? 0, chart.xTicks.at(-1) ?? 1]}
        ticks={[...chart.xTicks]}
        {...axis}
        tickFormatter={tickText}
        label={below(`${chart.xLabel}, ${chart.xUnit}`)}
      />
      <YAxis {...upright(chart.yTicks, chart.yUnit)} domain={[low, high]} allowDataOverflow />
      <Tooltip {...reading(chart.yUnit)} labelFormatter={(x) => `${shortNumber(x)} ${chart.xUnit}`} />
      {placedLevels(chart).map(({ label, y, style, below: isBelow }) => (
        <ReferenceLine
          key={label}
          y={y}
          stroke={palette.soft}
          strokeWidth={1}
          strokeDasharray={dashes[style] || '0'}
          label={levelLabel(label, isBelow ? 'insideTopLeft' : 'insideBottomLeft')}
        />
      ))}
      {chart.lines.map(({ key, label, style }) => (
        <Line
          key={key}
          name={label}
          dataKey={key}
          type="linear"
          stroke={palette.warm}
          strokeWidth={2}
          strokeDasharray={dashes[style]}
          dot={false}
          isAnimationActive={false}
        />
      ))}
      {lineEnds(chart).map(({ key, label, x, y }) => (
        <ReferenceDot
          key={key}
          x={x}
          y={y}
          r={0}
          label={{ value: label, position: 'right', fill: palette.ink, fontSize: 13 }}
        />
      ))}
      {chart.marks.map(({ label, x, y }) => (
        <ReferenceDot
          key={`${x} ${y}`}
          x={x}
          y={y}
          r={4}
          fill={palette.ink}
          stroke={palette.paper}
          {...(label !== '' && {
            label: <MarkLabel lines={[label]} used={false} leftwards={x > leftFrom} far={x < farUntil} />,
          })}
        />
      ))}
    </LineChart>
  );
}
