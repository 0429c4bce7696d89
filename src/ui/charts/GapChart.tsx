import {
  Area,
  CartesianGrid,
  ComposedChart,
  Line,
  ReferenceArea,
  ReferenceDot,
  ReferenceLine,
  Tooltip,
  XAxis,
  YAxis,
} from 'recharts';
import type { GapChart as Chart } from '../../report/gaps/gapChart.ts';
import { axis, below, frame, grid, levelLabel, tooltip, upright } from './axes.ts';
import { besideLabel, gapRows, isWorse, presentLabel, spanLabel } from './gapRows.ts';
import { MarkLabel } from './MarkLabel.tsx';
import { palette } from './palette.ts';
import { shortNumber, tickText } from './rows.ts';

const hatch = 'gap-hatch';

/** Hottest film over one gap: what a cut that misses may come to as a band, and the gaps where the box does not hold hatched. */
export default function GapChart({ chart }: { readonly chart: Chart }) {
  const { xTicks, yTicks, xUnit, yUnit, none, limit, present, knee } = chart;
  const low = xTicks[0] ?? 0;
  const high = xTicks.at(-1) ?? 1;
  const middle = (low + high) / 2;
  return (
    <ComposedChart
      {...frame}
      data={gapRows(chart)}
      margin={{ top: 30, right: 24, bottom: 20, left: 8 }}
      title={chart.spoken}
    >
      <defs>
        <pattern id={hatch} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path d="M0 0V7" stroke={palette.soft} strokeWidth={1} strokeOpacity={0.55} />
        </pattern>
      </defs>
      <CartesianGrid {...grid} />
      <XAxis
        dataKey="x"
        type="number"
        domain={[low, high]}
        ticks={[...xTicks]}
        {...axis}
        tickFormatter={tickText}
        label={below(`${chart.xLabel}, ${xUnit}`)}
      />
      <YAxis {...upright(yTicks, yUnit)} domain={[yTicks[0] ?? 0, yTicks.at(-1) ?? 1]} allowDataOverflow />
      <Tooltip
        {...tooltip}
        formatter={(value) => readings(value, yUnit)}
        labelFormatter={(x) => `${shortNumber(x)} ${xUnit}`}
      />
      {chart.spans.filter(isWorse(chart.spans)).map(({ from, to, word, state }) => (
        <ReferenceArea
          key={from}
          x1={from}
          x2={to}
          fill={state === 'little' ? palette.line : `url(#${hatch})`}
          fillOpacity={state === 'little' ? 0.35 : 1}
          stroke={palette.ink}
          strokeDasharray="2 3"
          {...spanLabel(word, to - from > 0.2 * (high - low))}
        />
      ))}
      <Area
        name="with a cut that misses"
        dataKey="band"
        stroke="none"
        fill={palette.warm}
        fillOpacity={0.22}
        isAnimationActive={false}
      />
      {none && (
        <ReferenceLine
          y={none.y}
          stroke={palette.soft}
          strokeDasharray="8 4"
          label={besideLabel(none.label, present !== null && present.x < middle)}
        />
      )}
      {!limit.isAbove && (
        <ReferenceLine
          y={limit.y}
          stroke={palette.ink}
          strokeWidth={1.5}
          label={levelLabel(limit.label, 'insideBottomLeft')}
        />
      )}
      {present && (
        <ReferenceLine
          x={present.x}
          stroke={palette.ink}
          strokeDasharray="2 3"
          label={presentLabel(present.label, present.x > middle)}
        />
      )}
      <Line
        name="hottest film"
        dataKey="film"
        type="linear"
        stroke={palette.warm}
        strokeWidth={2}
        dot={false}
        isAnimationActive={false}
      />
      {chart.rows.map(({ x, y }) => (
        <ReferenceDot
          key={x}
          x={x}
          y={y}
          r={3}
          fill={palette.paper}
          stroke={palette.warm}
          strokeWidth={1.5}
        />
      ))}
      {knee && (
        <ReferenceDot
          x={knee.x}
          y={knee.y}
          r={5}
          fill="none"
          stroke={palette.ink}
          label={<MarkLabel lines={[knee.label]} used={false} leftwards={knee.x > middle} />}
        />
      )}
      {present && (
        <ReferenceDot x={present.x} y={present.y} r={5} fill={palette.ink} stroke={palette.paper} />
      )}
    </ComposedChart>
  );
}

/** One number, or both ends of the band. */
function readings(value: unknown, unit: string): string {
  const text = Array.isArray(value) ? value.map(shortNumber).join(' – ') : shortNumber(value);
  return `${text} ${unit}`;
}
