import type { FanChart, Ladder } from '../../report/types.ts';

/** Plots drawn by hand in millimetres on paper: no chart library, so that they print anywhere. */
export interface Tick {
  readonly at: number;
  readonly text: string;
}

export interface FanPlot {
  readonly width: number;
  readonly height: number;
  readonly frame: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
  readonly xTicks: readonly Tick[];
  readonly yTicks: readonly Tick[];
  readonly fan: string;
  readonly box: string;
  readonly stallX: number | null;
  readonly marks: readonly {
    readonly x: number;
    readonly y: number;
    readonly used: boolean;
    readonly stable: boolean;
    readonly lines: readonly string[];
    readonly textX: number;
    readonly textY: number;
    readonly anchor: 'start' | 'end';
  }[];
  readonly names: readonly {
    readonly text: string;
    readonly x: number;
    readonly y: number;
    readonly anchor: 'start' | 'end';
  }[];
  readonly xName: string;
  readonly yName: string;
}

const margin = { left: 8, right: 2, top: 4, bottom: 7.5 } as const;

export function plotFan(chart: FanChart, width: number, height: number): FanPlot {
  const frame = {
    x: margin.left,
    y: margin.top,
    width: width - margin.left - margin.right,
    height: height - margin.top - margin.bottom,
  };
  const xMax = chart.flowTicks.at(-1) ?? 1;
  const yMax = chart.pressureTicks.at(-1) ?? 1;
  const x = (flow: number) => round(frame.x + (flow / xMax) * frame.width);
  const y = (dp: number) => round(frame.y + frame.height - (Math.min(dp, yMax) / yMax) * frame.height);
  const line = (points: FanChart['fan']) =>
    points.map((p, i) => `${i === 0 ? 'M' : 'L'}${x(p.flow)} ${y(p.dp)}`).join('');
  const box = chart.system.filter((_, i, all) => i === 0 || (all[i - 1]?.dp ?? 0) < yMax);
  const boxEnd = box.at(-1);
  const fanAt = chart.fan[Math.floor(chart.fan.length * 0.86)];
  return {
    width,
    height,
    frame,
    xTicks: chart.flowTicks.map((flow) => ({ at: x(flow), text: tickText(flow) })),
    yTicks: chart.pressureTicks.map((dp) => ({ at: y(dp), text: tickText(dp) })),
    fan: line(chart.fan),
    box: line(box),
    stallX: chart.stallBelow === null ? null : x(chart.stallBelow),
    marks: chart.marks.map((mark) => {
      const left = mark.flow > 0.78 * xMax;
      return {
        x: x(mark.flow),
        y: y(mark.dp),
        used: mark.used,
        stable: mark.stable,
        lines: mark.label.split(', '),
        textX: x(mark.flow) + (left ? -2 : 2),
        textY: y(mark.dp) + (left ? 3.4 : 0.2),
        anchor: left ? 'end' : 'start',
      };
    }),
    names: [
      { text: 'fan', x: x(fanAt?.flow ?? 0) + 1.2, y: y(fanAt?.dp ?? 0) - 0.2, anchor: 'start' },
      { text: 'box', x: x(boxEnd?.flow ?? 0) - 2.2, y: y(boxEnd?.dp ?? 0) + 2.6, anchor: 'end' },
    ],
    xName: chart.flowUnit,
    yName: chart.pressureUnit,
  };
}

export interface LadderPlot {
  readonly width: number;
  readonly height: number;
  readonly axisY: number;
  readonly top: number;
  readonly ticks: readonly Tick[];
  readonly bars: readonly {
    readonly key: string;
    readonly label: string;
    readonly rise: string;
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
    readonly riseX: number;
    readonly riseAnchor: 'start' | 'end';
    readonly middle: number;
    readonly linkX: number;
  }[];
  readonly limitX: number;
  readonly limitText: string;
  readonly roomX: number;
  readonly labelX: number;
  readonly topText: string;
  readonly unit: string;
}

const labelled = 27;

export function plotLadder(ladder: Ladder, width: number, height: number): LadderPlot {
  const low = ladder.ticks[0] ?? 0;
  const high = ladder.ticks.at(-1) ?? 1;
  const span = width - labelled - 3;
  const x = (value: number) => round(labelled + ((value - low) / (high - low)) * span);
  const axisY = height - 7.5;
  const top = 5;
  const steps = ladder.rungs.filter((rung) => rung.key !== 'room');
  const pitch = (axisY - top) / Math.max(steps.length, 1);
  const room = ladder.rungs[0];
  return {
    width,
    height,
    axisY,
    top,
    ticks: ladder.ticks.map((value) => ({ at: x(value), text: tickText(value) })),
    bars: steps.map((rung, i) => {
      const from = x(Math.min(rung.from, rung.to));
      const to = x(Math.max(rung.from, rung.to));
      const y = round(top + i * pitch + pitch * 0.18);
      const outside = to + 12 > width;
      return {
        key: rung.key,
        label: rung.label,
        rise: rung.rise,
        x: from,
        y,
        width: Math.max(0.25, round(to - from)),
        height: round(pitch * 0.64),
        riseX: outside ? from - 1 : to + 1,
        riseAnchor: outside ? 'end' : 'start',
        middle: round(y + pitch * 0.32),
        linkX: x(rung.to),
      };
    }),
    limitX: x(ladder.limit),
    limitText: ladder.limitText,
    roomX: x(room?.to ?? low),
    labelX: labelled - 1.5,
    topText: ladder.rungs.at(-1)?.top ?? '',
    unit: ladder.unit,
  };
}

function tickText(value: number): string {
  return `${Number(value.toPrecision(6))}`.replace('-', '−');
}

function round(value: number): number {
  return Number(value.toFixed(3));
}
