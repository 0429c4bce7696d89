import {
  CartesianGrid,
  Legend,
  ReferenceLine,
  Scatter,
  ScatterChart,
  Tooltip,
  type TooltipContentProps,
  XAxis,
  YAxis,
  ZAxis,
} from 'recharts';
import type { CheckKind } from '../../core/card.ts';
import type { EvidenceChart as Chart, EvidencePoint } from '../../report/evidence/evidenceChart.ts';
import { axis, below, frame, grid, tooltip, upright } from './axes.ts';
import { palette } from './palette.ts';
import { tickText } from './rows.ts';

/** Kinds are told apart by shape; what came from outside is filled, what did not is an outline. */
const marks = {
  measured: { shape: 'star', fill: palette.warm },
  handbook: { shape: 'square', fill: palette.warm },
  'worked example': { shape: 'diamond', fill: palette.warm },
  'computed elsewhere': { shape: 'circle', fill: palette.air },
  'worked again': { shape: 'cross', fill: palette.paper },
  'from memory': { shape: 'triangle', fill: palette.paper },
} as const satisfies Readonly<Record<CheckKind, unknown>>;

const powerText = (power: number) =>
  Math.abs(power) <= 2
    ? tickText(10 ** power)
    : `10${[...String(power)].map((c) => (c === '-' ? '⁻' : '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(c)])).join('')}`;

const ends = (ticks: readonly number[]): [number, number] => [ticks[0] ?? 0, ticks.at(-1) ?? 1];

/** Checks as points over the size of the published number, with the line of agreement. */
export default function EvidenceChart({ chart }: { readonly chart: Chart }) {
  const { xTicks, yTicks } = chart;
  const isMatch = chart.upright === 'powers';
  const [low, high] = ends(xTicks);
  return (
    <ScatterChart {...frame} margin={{ top: 30, right: 16, bottom: 20, left: 8 }} title={chart.spoken}>
      <CartesianGrid {...grid} />
      <XAxis
        dataKey="x"
        type="number"
        domain={[low, high]}
        ticks={[...xTicks]}
        interval={0}
        {...axis}
        tickFormatter={powerText}
        label={below('published')}
      />
      <YAxis
        dataKey="y"
        {...upright(yTicks, chart.yLabel)}
        domain={ends(yTicks)}
        {...(isMatch && { tickFormatter: powerText })}
      />
      <ZAxis range={[28, 28]} />
      <Tooltip content={Reading} isAnimationActive={false} cursor={false} />
      <Legend verticalAlign="bottom" wrapperStyle={{ fontSize: 12, bottom: 0 }} formatter={legendText} />
      <ReferenceLine
        segment={[
          { x: low, y: isMatch ? low : 0 },
          { x: high, y: isMatch ? high : 0 },
        ]}
        stroke={palette.ink}
        strokeWidth={1}
      />
      {chart.series.map(({ kind, label, points }) => (
        <Scatter
          key={kind}
          name={label}
          data={[...points]}
          shape={marks[kind].shape}
          legendType={marks[kind].shape}
          fill={marks[kind].fill}
          fillOpacity={0.75}
          stroke={palette.ink}
          strokeWidth={0.6}
          isAnimationActive={false}
        />
      ))}
    </ScatterChart>
  );
}

const legendText = (label: string) => <span style={{ color: palette.ink }}>{label}</span>;

function Reading({ active, payload }: TooltipContentProps) {
  const point: EvidencePoint | undefined = payload[0]?.payload;
  if (!active || point === undefined) return null;
  return (
    <div style={{ ...tooltip.contentStyle, padding: 8, maxWidth: 260 }}>
      {point.name}
      <br />
      {point.says}
    </div>
  );
}
