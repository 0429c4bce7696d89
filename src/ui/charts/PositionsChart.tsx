import { CartesianGrid, Line, LineChart, ReferenceLine, Tooltip, XAxis, YAxis } from 'recharts';
import type { HeatReport } from '../../report/types.ts';
import { axis, below, frame, grid, levelLabel, reading, upright } from './axes.ts';
import { palette } from './palette.ts';
import { type PositionPoint, positionPoints } from './positionPoints.ts';

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
      {...frame}
      data={points}
      margin={{ top: 30, right: 24, bottom: 20, left: 8 }}
      title={heat.spoken}
    >
      <CartesianGrid vertical={false} {...grid} />
      <XAxis
        dataKey="number"
        {...axis}
        padding={{ left: 16, right: 16 }}
        label={below('resistor, from the fan')}
      />
      <YAxis
        {...upright(heat.ticks, heat.temperatureUnit)}
        domain={[heat.ticks[0] ?? 0, heat.ticks.at(-1) ?? 1]}
      />
      <Tooltip {...reading(heat.temperatureUnit)} labelFormatter={(number) => `resistor ${number}`} />
      <ReferenceLine
        y={heat.ladder.rungs[0]?.to ?? 0}
        stroke={palette.soft}
        label={levelLabel('room', 'insideBottomLeft')}
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
