import type { FanChart } from '../../report/types.ts';
import { type Area, areaOf, placeText, type Words } from './placeText.ts';
import { dotArea, framed, type PlotFrame, type Point, polyline } from './plotFrame.ts';

export interface FanMark extends Point {
  readonly used: boolean;
  readonly stable: boolean;
  /** `null` where there is no room for it; the table of meeting points has all of them. */
  readonly words: Words | null;
}

export interface FanPlot extends PlotFrame {
  readonly fan: string;
  readonly box: string;
  readonly stallX: number | null;
  readonly marks: readonly FanMark[];
  readonly names: readonly Words[];
}

export function plotFan(chart: FanChart, width: number, height: number): FanPlot {
  const { plot, placeX, placeY } = framed(
    { width, height },
    { ticks: chart.flowTicks, name: chart.flowUnit },
    { ticks: chart.pressureTicks, name: chart.pressureUnit },
  );
  const yMax = chart.pressureTicks.at(-1) ?? 1;
  const at = ({ flow, dp }: FanChart['fan'][number]): Point => ({
    x: placeX(flow),
    y: placeY(Math.min(dp, yMax)),
  });
  const box = chart.system.filter((_, i, all) => i === 0 || (all[i - 1]?.dp ?? 0) < yMax).map(at);
  const fan = chart.fan.map(at);
  const marks = chart.marks.map((mark) => ({ ...mark, ...at(mark) }));
  const taken: Area[] = marks.map(dotArea);
  const put = (places: readonly Words[]): Words | null => {
    const words = placeText(places, taken, plot.frame);
    if (words) taken.push(areaOf(words));
    return words;
  };
  // The point that is used comes first: where there is no room for all, others go without words.
  const placed = [...marks]
    .sort((a, b) => Number(b.used) - Number(a.used))
    .map(({ x, y, used, stable, label }) => ({
      x,
      y,
      used,
      stable,
      words: put(besidePoint(label.split(', '), { x, y })),
    }));
  const names = [put(alongLine('fan', fan)), put(alongLine('box', box))];
  return {
    ...plot,
    fan: polyline(fan),
    box: polyline(box),
    stallX: chart.stallBelow === null ? null : placeX(chart.stallBelow),
    marks: placed,
    names: names.filter((name) => name !== null),
  };
}

function besidePoint(lines: readonly string[], { x, y }: Point): Words[] {
  return [
    { lines, x: x + 2, y: y + 0.4, anchor: 'start' },
    { lines, x: x + 2, y: y - 3.4, anchor: 'start' },
    { lines, x: x - 2, y: y + 3.6, anchor: 'end' },
    { lines, x: x - 2, y: y - 3.4, anchor: 'end' },
    { lines, x: x + 2, y: y + 4.4, anchor: 'start' },
  ];
}

/** Near the end of a line first, then ever nearer its beginning, above it or below. */
function alongLine(text: string, points: readonly Point[]): Words[] {
  return [0.86, 0.94, 0.75, 0.6, 0.3, 0.2].flatMap((share): Words[] => {
    const point = points[Math.floor((points.length - 1) * share)];
    if (!point) return [];
    const { x, y } = point;
    return [
      { lines: [text], x: x + 1.2, y: y - 0.6, anchor: 'start' },
      { lines: [text], x: x - 1.4, y: y - 0.2, anchor: 'end' },
      { lines: [text], x: x + 1.4, y: y + 2.6, anchor: 'start' },
    ];
  });
}
