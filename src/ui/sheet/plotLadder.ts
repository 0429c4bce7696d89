import type { Ladder } from '../../report/types.ts';
import { round, type Tick, tickText } from './plotFrame.ts';

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
    ticks: thinned(ladder.ticks.map((value) => ({ at: x(value), text: tickText(value) }))),
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

/** Every second or third tick where all would run into one another. */
function thinned(ticks: readonly Tick[]): Tick[] {
  const [first, second] = ticks;
  const pitch = first && second ? second.at - first.at : 99;
  const every = Math.max(1, Math.ceil(7 / pitch));
  return ticks.filter((_, i) => i % every === 0);
}
