import { Bar, BarChart, CartesianGrid, LabelList, ReferenceLine, Tooltip, XAxis, YAxis } from 'recharts';
import type { Ladder } from '../../report/types.ts';
import { axis, frame, grid, tooltip } from './axes.ts';
import { ladderRows } from './ladderRows.ts';
import { palette } from './palette.ts';
import { tickText } from './rows.ts';

/** Steps from the room to the hottest film, each beginning where the one before ends. */
export default function LadderChart({ ladder }: { readonly ladder: Ladder }) {
  const rows = ladderRows(ladder);
  const room = ladder.rungs[0];
  return (
    <BarChart
      {...frame}
      layout="vertical"
      data={rows}
      margin={{ top: 24, right: 56, bottom: 20, left: 8 }}
      barCategoryGap="22%"
      title={ladder.spoken}
    >
      <CartesianGrid horizontal={false} {...grid} />
      <XAxis
        type="number"
        domain={[ladder.ticks[0] ?? 0, ladder.ticks.at(-1) ?? 1]}
        ticks={[...ladder.ticks]}
        {...axis}
        tickFormatter={tickText}
        label={{
          value: ladder.unit,
          position: 'insideBottomRight',
          offset: -12,
          fill: palette.soft,
          fontSize: 12,
        }}
      />
      <YAxis
        type="category"
        dataKey="label"
        tick={{ fill: palette.ink, fontSize: 12 }}
        stroke={palette.line}
        width={156}
      />
      <Tooltip
        {...tooltip}
        cursor={{ fill: palette.line, fillOpacity: 0.25 }}
        formatter={(_, __, item) => [item.payload.said, 'step']}
      />
      {room && (
        <ReferenceLine
          x={room.to}
          stroke={palette.soft}
          label={{ value: `room ${room.top}`, position: 'top', fill: palette.soft, fontSize: 12 }}
        />
      )}
      <ReferenceLine
        x={ladder.limit}
        stroke={palette.ink}
        strokeDasharray="5 4"
        label={{ value: ladder.limitText, position: 'top', fill: palette.ink, fontSize: 12 }}
      />
      <Bar
        dataKey="span"
        fill={palette.warm}
        stroke={palette.ink}
        strokeWidth={0.5}
        isAnimationActive={false}
        minPointSize={2}
      >
        <LabelList dataKey="rise" position="right" fill={palette.ink} fontSize={13} />
      </Bar>
    </BarChart>
  );
}
