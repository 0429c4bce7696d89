import type { GapMapPicture } from '../../report/gaps/gapMapPicture.ts';

interface Point {
  readonly x: number;
  readonly y: number;
}

/** Where everything of a map stands, in pixels. */
export interface MapGeometry {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
}

const margin = { left: 56, right: 16, top: 28, bottom: 44 };
const leastHeight = 280;
const mostHeight = 440;

export function mapGeometry({ xSpan, ySpan }: GapMapPicture, width: number): MapGeometry {
  const height = Math.min(mostHeight, Math.max(leastHeight, Math.round(0.66 * width)));
  const right = width - margin.right;
  const bottom = height - margin.bottom;
  const scale = ([low, high]: readonly [number, number], from: number, to: number) => {
    const span = high > low ? high - low : 1;
    return (value: number) => from + ((value - low) / span) * (to - from);
  };
  return {
    width,
    height,
    left: margin.left,
    right,
    top: margin.top,
    bottom,
    x: scale(xSpan, margin.left, right),
    y: scale(ySpan, bottom, margin.top),
  };
}

/** Lines or filled shapes as one path. */
export function pathOf(
  shapes: readonly (readonly Point[])[],
  { x, y }: MapGeometry,
  isClosed: boolean,
): string {
  return shapes
    .map((points) => {
      const at = points.map((point) => `${x(point.x).toFixed(1)} ${y(point.y).toFixed(1)}`);
      return `M${at.join('L')}${isClosed ? 'Z' : ''}`;
    })
    .join('');
}

/** Shorter lines than this have no room for a name, and names nearer than that would cover one another. */
const leastLine = 60;
const leastApart = { x: 30, y: 16 };

interface PlacedName extends Point {
  readonly label: string;
}

/** The names of the lines that have room for one, each in the middle of its line. */
export function placedNames({ isolines }: GapMapPicture, geometry: MapGeometry): PlacedName[] {
  const placed: PlacedName[] = [];
  for (const { label, lines } of isolines) {
    for (const line of lines) {
      const at = middleOf(line, geometry);
      const isFree = ({ x, y }: Point) =>
        x > geometry.left + leastApart.x / 2 &&
        x < geometry.right - leastApart.x / 2 &&
        placed.every((other) => Math.abs(other.x - x) > leastApart.x || Math.abs(other.y - y) > leastApart.y);
      if (at && isFree(at)) placed.push({ label, ...at });
    }
  }
  return placed;
}

function middleOf(line: readonly Point[], geometry: MapGeometry): Point | null {
  const at = line.map(({ x, y }) => ({ x: geometry.x(x), y: geometry.y(y) }));
  const lengths = at.map((point, i) => {
    const before = at[i - 1] ?? point;
    return Math.hypot(point.x - before.x, point.y - before.y);
  });
  const whole = lengths.reduce((sum, length) => sum + length, 0);
  if (whole < leastLine) return null;
  let run = 0;
  const middle = lengths.findIndex((length) => {
    run += length;
    return run >= whole / 2;
  });
  return at[middle] ?? null;
}
