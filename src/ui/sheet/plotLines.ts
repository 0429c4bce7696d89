import type { LineChart, LinePoint, LineStyle } from '../../report/lineChart.ts';
import { type Area, areaOf, placeText, type Words } from './placeText.ts';
import { dotArea, framed, type PlotFrame, type Point, polyline } from './plotFrame.ts';

export interface LinesPlot extends PlotFrame {
  readonly lines: readonly { readonly key: string; readonly style: LineStyle; readonly d: string }[];
  readonly marks: readonly (Point & { readonly words: Words | null })[];
  readonly names: readonly Words[];
}

/** Lines over one axis, each with its name where there is room beside it. */
export function plotLines(chart: LineChart, width: number, height: number): LinesPlot {
  const { plot, placeX, placeY } = framed(
    { width, height },
    { ticks: chart.xTicks, name: `${chart.xLabel}, ${chart.xUnit}` },
    { ticks: chart.yTicks, name: chart.yUnit },
  );
  const lines = chart.lines.map(({ key, label, style, points }) => ({
    key,
    label,
    style,
    // A gap, where there is no answer, parts the line.
    pieces: unbroken(points).map((piece) => piece.map(({ x, y }) => ({ x: placeX(x), y: placeY(y) }))),
  }));
  const marks = chart.marks.map(({ label, x, y }) => ({ label, x: placeX(x), y: placeY(y) }));
  const taken: Area[] = [...marks.map(dotArea), ...lines.flatMap(({ pieces }) => pieces.flatMap(covered))];
  const put = (places: readonly Words[]): Words | null => {
    const words = placeText(places, taken, plot.frame);
    if (words) taken.push(areaOf(words));
    return words;
  };
  return {
    ...plot,
    lines: lines.map(({ key, style, pieces }) => ({ key, style, d: pieces.map(polyline).join('') })),
    marks: marks.map(({ label, x, y }) => ({ x, y, words: put(around([label], { x, y })) })),
    names: lines.flatMap(({ label, pieces }) => put(along([label], pieces.flat())) ?? []),
  };
}

function unbroken(points: readonly LinePoint[]): Point[][] {
  const pieces: Point[][] = [[]];
  for (const { x, y } of points) {
    if (y === null) pieces.push([]);
    else pieces.at(-1)?.push({ x, y });
  }
  return pieces;
}

const steps = 8;

/** The strip that a line covers, in short lengths. */
function covered(points: readonly Point[]): Area[] {
  return points.slice(1).flatMap((to, i) => {
    const from = points[i] as Point;
    const part = (share: number) => from.y + (to.y - from.y) * share;
    const length = (to.x - from.x) / steps;
    return Array.from({ length: steps }, (_, step) => {
      const [a, b] = [part(step / steps), part((step + 1) / steps)];
      return { x: from.x + step * length, y: Math.min(a, b), width: length, height: Math.abs(b - a) + 0.2 };
    });
  });
}

function around(lines: readonly string[], { x, y }: Point): Words[] {
  return [
    { lines, x: x + 1, y: y - 1.6, anchor: 'start' },
    { lines, x: x - 1, y: y + 3.6, anchor: 'end' },
    { lines, x: x - 1, y: y - 1.6, anchor: 'end' },
    { lines, x: x + 1, y: y + 3.6, anchor: 'start' },
  ];
}

function along(lines: readonly string[], points: readonly Point[]): Words[] {
  return [0.3, 0.5, 0.15, 0.8, 0].flatMap((share) => {
    const point = points[Math.round((points.length - 1) * share)];
    if (!point) return [];
    return [1, 2.5, 4].flatMap((far): Words[] => [
      { lines, x: point.x + 1, y: point.y - far, anchor: 'start' },
      { lines, x: point.x - 1, y: point.y + 2.2 + far, anchor: 'end' },
    ]);
  });
}
