import type { ResidualChart } from '../../report/bench/residualChart.ts';
import { type Frame, round, type Tick, tickText } from './plotFrame.ts';

/** Readings one under another, in millimetres on paper. */
export interface ResidualsPlot {
  readonly width: number;
  readonly height: number;
  readonly frame: Frame;
  readonly ticks: readonly Tick[];
  /** Of the instruments. */
  readonly band: Frame;
  readonly middle: number;
  readonly lines: readonly {
    readonly key: string;
    readonly label: string;
    readonly y: number;
    readonly before: number;
    readonly after: number | null;
  }[];
}

const margin = { left: 46, right: 4, top: 2, bottom: 8 } as const;
const roomy = 5;

/** @param most as high as the page has room for; many readings stand closer together */
export function plotResiduals({ rows, ticks }: ResidualChart, width: number, most: number): ResidualsPlot {
  const step = Math.min(roomy, (most - margin.top - margin.bottom) / Math.max(rows.length, 1));
  const frame: Frame = {
    x: margin.left,
    y: margin.top,
    width: width - margin.left - margin.right,
    height: step * rows.length,
  };
  const [low, high] = [ticks[0] ?? -1, ticks.at(-1) ?? 1];
  const placeX = (value: number) => round(frame.x + ((value - low) / (high - low)) * frame.width);
  const [left, right] = [placeX(-1), placeX(1)];
  return {
    width,
    height: frame.height + margin.top + margin.bottom,
    frame,
    ticks: ticks.map((value) => ({ at: placeX(value), text: tickText(value) })),
    band: { x: left, y: frame.y, width: round(right - left), height: frame.height },
    middle: placeX(0),
    lines: rows.map(({ key, label, before, after }, at) => ({
      key,
      label,
      y: round(frame.y + step * (at + 0.5)),
      before: placeX(before),
      after: after === null ? null : placeX(after),
    })),
  };
}
