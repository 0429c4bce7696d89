import type { CheckKind } from '../../core/card.ts';
import type { EvidenceChart, EvidencePoint } from '../../report/evidence/evidenceChart.ts';
import { tickText } from './rows.ts';

/** Where the plot lies in its picture, and how to get there; all in pixels. */
export interface EvidenceGeometry {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
}

const margins = { left: 48, right: 16, top: 24, bottom: 46 } as const;
const plotHeight = 216;
const lineHeight = 18;

const ends = (ticks: readonly number[]) => [ticks[0] ?? 0, ticks.at(-1) ?? 1] as const;

export function evidenceGeometry(
  { xTicks, yTicks }: EvidenceChart,
  width: number,
  legendLines: number,
): EvidenceGeometry {
  const { left, top } = margins;
  const right = Math.max(width - margins.right, left + 1);
  const bottom = top + plotHeight;
  const [x0, x1] = ends(xTicks);
  const [y0, y1] = ends(yTicks);
  return {
    width,
    height: bottom + margins.bottom + legendLines * lineHeight,
    left,
    right,
    top,
    bottom,
    x: (value) => left + ((value - x0) / (x1 - x0)) * (right - left),
    y: (value) => bottom - ((value - y0) / (y1 - y0)) * (bottom - top),
  };
}

/** Half the size of a mark. */
const r = 3.5;

/** One mark about the middle of its place; each kind has a shape of its own. */
const shapes: Readonly<Record<CheckKind, string>> = {
  measured: `m0 ${-1.6 * r}l${0.5 * r} ${r}h${1.1 * r}l${-0.9 * r} ${0.8 * r}l${0.4 * r} ${1.2 * r}l${-1.1 * r} ${-0.7 * r}l${-1.1 * r} ${0.7 * r}l${0.4 * r} ${-1.2 * r}l${-0.9 * r} ${-0.8 * r}h${1.1 * r}z`,
  handbook: `m${-r} ${-r}h${2 * r}v${2 * r}h${-2 * r}z`,
  'worked example': `m0 ${-1.4 * r}l${r} ${1.4 * r}l${-r} ${1.4 * r}l${-r} ${-1.4 * r}z`,
  'computed elsewhere': `m${-r} 0a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0z`,
  'worked again': `m${-0.4 * r} ${-1.2 * r}h${0.8 * r}v${0.8 * r}h${0.8 * r}v${0.8 * r}h${-0.8 * r}v${0.8 * r}h${-0.8 * r}v${-0.8 * r}h${-0.8 * r}v${-0.8 * r}h${0.8 * r}z`,
  'from memory': `m0 ${-1.2 * r}l${1.15 * r} ${2.1 * r}h${-2.3 * r}z`,
};

const at = (x: number, y: number) => `M${x.toFixed(1)} ${y.toFixed(1)}`;

export const markAt = (kind: CheckKind, x: number, y: number): string => at(x, y) + shapes[kind];

/** All marks of one kind in one path: a thousand elements would make the page wait. */
export function marksPath(
  kind: CheckKind,
  points: readonly EvidencePoint[],
  { x, y }: EvidenceGeometry,
): string {
  return points.map((point) => markAt(kind, x(point.x), y(point.y))).join('');
}

/** The point nearest to a place in the picture, if one is near. */
export function nearestPoint(
  { series }: EvidenceChart,
  { x, y }: EvidenceGeometry,
  place: { readonly x: number; readonly y: number },
): EvidencePoint | null {
  let [found, least] = [null as EvidencePoint | null, 24];
  for (const point of series.flatMap(({ points }) => points)) {
    const distance = Math.hypot(x(point.x) - place.x, y(point.y) - place.y);
    if (distance < least) [found, least] = [point, distance];
  }
  return found;
}

const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** A power of ten as a number, or where that is long as a power. */
export function powerText(power: number): string {
  if (Math.abs(power) <= 2) return tickText(10 ** power);
  return `10${[...String(power)].map((c) => (c === '-' ? '⁻' : (superscripts[Number(c)] ?? ''))).join('')}`;
}

/** Names of kinds with their places, line by line under the plot. */
export function legendPlaces(
  { series }: EvidenceChart,
  width: number,
): { readonly kind: CheckKind; readonly label: string; readonly x: number; readonly line: number }[] {
  let [x, line] = [margins.left as number, 0];
  return series.map(({ kind, label }) => {
    const takes = 24 + 6.8 * label.length;
    if (x > margins.left && x + takes > width) [x, line] = [margins.left, line + 1];
    const placed = { kind, label, x, line };
    x += takes;
    return placed;
  });
}

export const legendTop = ({ bottom }: EvidenceGeometry, line: number): number =>
  bottom + margins.bottom + 6 + line * lineHeight;
