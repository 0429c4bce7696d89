import {
  CartesianGrid,
  ReferenceArea,
  ReferenceLine,
  Scatter,
  ScatterChart,
  Tooltip,
  XAxis,
  YAxis,
} from 'recharts';
import type { ResidualChart as Chart } from '../../report/bench/residualChart.ts';
import { axis, below, frame, grid, tooltip } from './axes.ts';
import { palette } from './palette.ts';
import { residualLayout } from './residualLayout.ts';
import { shortNumber, tickText } from './rows.ts';

interface Spot {
  readonly cx?: number | undefined;
  readonly cy?: number | undefined;
}

const hollow = ({ cx = 0, cy = 0 }: Spot) => (
  <circle cx={cx} cy={cy} r={4.5} fill={palette.paper} stroke={palette.ink} strokeWidth={1.5} />
);
const diamond = ({ cx = 0, cy = 0 }: Spot) => (
  <path d={`M${cx} ${cy}m0-6l6 6-6 6-6-6z`} fill={palette.warm} stroke={palette.paper} />
);

/** Every reading a line, its deviation in widths of its instrument’s band: a ring as computed, a diamond after the fit. */
export default function ResidualsChart({ chart }: { readonly chart: Chart }) {
  const { before, after, labels, labelWidth, height, lines } = residualLayout(chart);
  const ticks = [...chart.ticks];
  return (
    <ScatterChart
      {...frame}
      style={{ width: '100%', height }}
      margin={{ top: 8, right: 16, bottom: 20, left: 8 }}
      title={chart.spoken}
    >
      <CartesianGrid {...grid} />
      <ReferenceArea x1={-1} x2={1} fill={palette.air} fillOpacity={0.18} />
      <XAxis
        dataKey="x"
        type="number"
        domain={[ticks[0] ?? -1, ticks.at(-1) ?? 1]}
        ticks={ticks}
        {...axis}
        tickFormatter={tickText}
        label={below(chart.xLabel)}
      />
      <YAxis
        dataKey="y"
        type="number"
        domain={[0.25, lines + 0.75]}
        reversed
        ticks={Array.from({ length: lines }, (_, at) => at + 1)}
        interval={0}
        {...axis}
        width={labelWidth}
        tick={{ ...axis.tick, width: labelWidth }}
        tickFormatter={(at) => labels[Number(at) - 1] ?? ''}
      />
      <Tooltip
        {...tooltip}
        cursor={false}
        formatter={(value, name) =>
          name === 'off' ? `${shortNumber(value)} ×` : (labels[Number(value) - 1] ?? '')
        }
      />
      <ReferenceLine x={0} stroke={palette.soft} />
      <Scatter name="as computed" data={before} shape={hollow} isAnimationActive={false} />
      {after.length > 0 && (
        <Scatter name="after the fit" data={after} shape={diamond} isAnimationActive={false} />
      )}
    </ScatterChart>
  );
}
