import { CartesianGrid, Line, LineChart, ReferenceLine, Tooltip, XAxis, YAxis } from 'recharts';
import type { HeatReport } from '../../report/types.ts';
import { palette, tick, tooltip } from './palette.ts';
import { type PositionPoint, positionPoints } from './positionPoints.ts';
import { shortNumber, tickText } from './rows.ts';

interface Spot {
  readonly cx?: number;
  readonly cy?: number;
  readonly index?: number;
}

const round = ({ cx = 0, cy = 0, index }: Spot) => (
  <circle key={index} cx={cx} cy={cy} r={4} fill={palette.ink} />
);
const square = ({ cx = 0, cy = 0, index }: Spot) => (
  <rect
    key={index}
    x={cx}
    y={cy}
    width={7}
    height={7}
    transform="translate(-3.5 -3.5)"
    fill={palette.paper}
    stroke={palette.ink}
  />
);
const bar = ({ cx = 0, cy = 0, index }: Spot) => (
  <path key={index} d={`M${cx} ${cy}m-5 0h10`} stroke={palette.ink} strokeWidth={2} />
);

/** Every position of the row: film, joint and warmest plate beside it, told apart by their marks. */
export default function PositionsChart({ heat }: { readonly heat: HeatReport }) {
  const points: PositionPoint[] = positionPoints(heat);
  return (
    <LineChart
      responsive
      style={{ width: '100%', height: '100%' }}
      data={points}
      margin={{ top: 30, right: 24, bottom: 20, left: 8 }}
      title={heat.spoken}
    >
      <CartesianGrid vertical={false} stroke={palette.line} strokeOpacity={0.5} />
      <XAxis
        dataKey="number"
        tick={tick}
        stroke={palette.line}
        padding={{ left: 16, right: 16 }}
        label={{
          value: 'resistor, from the fan',
          position: 'insideBottom',
          offset: -12,
          fill: palette.soft,
          fontSize: 12,
        }}
      />
      <YAxis
        type="number"
        domain={[heat.ticks[0] ?? 0, heat.ticks.at(-1) ?? 1]}
        ticks={[...heat.ticks]}
        tick={tick}
        stroke={palette.line}
        width={48}
        tickFormatter={tickText}
        label={{ value: heat.temperatureUnit, position: 'top', offset: 14, fill: palette.soft, fontSize: 12 }}
      />
      <Tooltip
        {...tooltip}
        isAnimationActive={false}
        formatter={(value) => `${shortNumber(value)} ${heat.temperatureUnit}`}
        labelFormatter={(number) => `resistor ${number}`}
      />
      <ReferenceLine
        y={heat.ladder.rungs[0]?.to ?? 0}
        stroke={palette.soft}
        label={{ value: 'room', position: 'insideBottomLeft', fill: palette.soft, fontSize: 12 }}
      />
      <Line name="film" dataKey="film" stroke={palette.warm} dot={round} isAnimationActive={false} />
      <Line
        name="joint"
        dataKey="joint"
        stroke={palette.warm}
        strokeDasharray="2 3"
        dot={square}
        isAnimationActive={false}
      />
      <Line
        name="plate beside it"
        dataKey="sink"
        stroke={palette.warm}
        strokeDasharray="7 3"
        dot={bar}
        connectNulls
        isAnimationActive={false}
      />
    </LineChart>
  );
}
