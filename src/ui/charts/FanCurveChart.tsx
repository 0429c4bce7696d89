import { CartesianGrid, Line, LineChart, ReferenceDot, ReferenceLine, Tooltip, XAxis, YAxis } from 'recharts';
import type { FanChart } from '../../report/types.ts';
import { axis, below, frame, grid, levelLabel, reading, upright } from './axes.ts';
import { MarkLabel } from './MarkLabel.tsx';
import { palette } from './palette.ts';
import { curveRows, namePlaces, shortNumber, tickText } from './rows.ts';

/** Fan curve solid, the box's curve dashed, every meeting point marked; the one used is filled and named. */
export default function FanCurveChart({ chart }: { readonly chart: FanChart }) {
  const names = namePlaces(chart);
  return (
    <LineChart
      {...frame}
      data={curveRows(chart)}
      margin={{ top: 30, right: 24, bottom: 20, left: 8 }}
      title={chart.spoken}
    >
      <CartesianGrid {...grid} />
      <XAxis
        dataKey="flow"
        type="number"
        domain={['dataMin', chart.flowTicks.at(-1) ?? 'dataMax']}
        ticks={[...chart.flowTicks]}
        {...axis}
        tickFormatter={tickText}
        label={below(`flow, ${chart.flowUnit}`)}
      />
      <YAxis
        {...upright(chart.pressureTicks, chart.pressureUnit)}
        domain={[0, chart.pressureTicks.at(-1) ?? 'dataMax']}
        allowDataOverflow
      />
      <Tooltip
        {...reading(chart.pressureUnit)}
        labelFormatter={(flow) => `${shortNumber(flow)} ${chart.flowUnit}`}
      />
      {chart.stallBelow !== null && (
        <ReferenceLine
          x={chart.stallBelow}
          stroke={palette.soft}
          strokeDasharray="2 4"
          label={levelLabel('stall', 'insideTopLeft')}
        />
      )}
      <Line
        name="fan"
        dataKey="fan"
        type="monotone"
        stroke={palette.ink}
        strokeWidth={2}
        dot={false}
        connectNulls
        isAnimationActive={false}
      />
      <Line
        name="box"
        dataKey="box"
        type="monotone"
        stroke={palette.air}
        strokeWidth={2}
        strokeDasharray="7 4"
        dot={false}
        connectNulls
        isAnimationActive={false}
      />
      <ReferenceDot
        x={names.fan.flow}
        y={names.fan.dp}
        r={0}
        label={{ value: 'fan', position: 'right', dy: -9, fill: palette.ink, fontSize: 13 }}
      />
      <ReferenceDot
        x={names.box.flow}
        y={names.box.dp}
        r={0}
        label={{ value: 'box', position: 'left', dy: -2, offset: 10, fill: palette.ink, fontSize: 13 }}
      />
      {chart.marks.map((mark) => (
        <ReferenceDot
          key={mark.label}
          x={mark.flow}
          y={mark.dp}
          r={6}
          fill={mark.used ? palette.ink : palette.paper}
          stroke={palette.ink}
          strokeWidth={2}
          strokeDasharray={mark.stable ? '' : '2 2'}
          label={<MarkLabel lines={mark.label.split(', ')} used={mark.used} />}
        />
      ))}
    </LineChart>
  );
}
