import { CartesianGrid, Line, LineChart, ReferenceDot, ReferenceLine, Tooltip, XAxis, YAxis } from 'recharts';
import type { LineChart as Chart, LineStyle } from '../../report/lineChart.ts';
import { lineEnds, lineRows, placedLevels } from './lineRows.ts';
import { MarkLabel } from './MarkLabel.tsx';
import { palette, tick, tooltip } from './palette.ts';
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
  const leftFrom = 0.55 * (chart.xTicks.at(-1) ?? 1);
  return (
    <LineChart
      responsive
      style={{ width: '100%', height: '100%' }}
      data={lineRows(chart)}
      margin={{ top: 30, right: 72, bottom: 20, left: 8 }}
      title={chart.spoken}
    >
      <CartesianGrid stroke={palette.line} strokeOpacity={0.5} />
      <XAxis
        dataKey="x"
        type="number"
        domain={[chart.xTicks[0] ?? 0, chart.xTicks.at(-1) ?? 1]}
        ticks={[...chart.xTicks]}
        tick={tick}
        stroke={palette.line}
        tickFormatter={tickText}
        label={{
          value: `${chart.xLabel}, ${chart.xUnit}`,
          position: 'insideBottom',
          offset: -12,
          fill: palette.soft,
          fontSize: 12,
        }}
      />
      <YAxis
        type="number"
        domain={[low, high]}
        ticks={[...chart.yTicks]}
        tick={tick}
        stroke={palette.line}
        width={48}
        allowDataOverflow
        tickFormatter={tickText}
        label={{ value: chart.yUnit, position: 'top', offset: 14, fill: palette.soft, fontSize: 12 }}
      />
      <Tooltip
        {...tooltip}
        isAnimationActive={false}
        formatter={(value) => `${shortNumber(value)} ${chart.yUnit}`}
        labelFormatter={(x) => `${shortNumber(x)} ${chart.xUnit}`}
      />
      {placedLevels(chart).map(({ label, y, style, below }) => (
        <ReferenceLine
          key={label}
          y={y}
          stroke={palette.soft}
          strokeWidth={1}
          strokeDasharray={dashes[style] || '0'}
          label={{
            value: label,
            position: below ? 'insideTopLeft' : 'insideBottomLeft',
            fill: palette.soft,
            fontSize: 12,
          }}
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
          key={label}
          x={x}
          y={y}
          r={4}
          fill={palette.ink}
          stroke={palette.paper}
          label={<MarkLabel lines={[label]} used={false} leftwards={x > leftFrom} />}
        />
      ))}
    </LineChart>
  );
}
