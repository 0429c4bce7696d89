import type { Arc, Mark, Point, Span } from './figure.ts';

export interface MarkPaths {
  /** Thin lines from the part to the arrows. */
  readonly witness: string;
  readonly line: string;
  /** Arrow heads, filled. */
  readonly heads: string;
  readonly dot: Point | null;
}

const headLength = 6;
const headHalf = 2.1;
/** A span shorter than this has its arrows outside. */
const roomy = 17;
const stub = 10;
/** Witness lines begin so far from the part and go so far beyond the arrows. */
const [clear, beyond] = [1.5, 2.5];

/** Lines, heads and dot that draw a measure. */
export function pathsOf(mark: Mark): MarkPaths {
  switch (mark.kind) {
    case 'span':
      return spanPaths(mark);
    case 'spot':
      return { witness: '', line: polyline([mark.at, ...mark.way]), heads: '', dot: mark.at };
    case 'arc':
      return arcPaths(mark);
  }
}

/** An arrow head with its point at `tip`, flying the way of `direction`. */
export function head(tip: Point, direction: Point, size = 1): string {
  const [x, y] = unit(direction);
  const back: Point = [tip[0] - x * headLength * size, tip[1] - y * headLength * size];
  const side: Point = [-y * headHalf * size, x * headHalf * size];
  return `M${tip.join(' ')}L${back[0] + side[0]} ${back[1] + side[1]}L${back[0] - side[0]} ${back[1] - side[1]}z`;
}

export function polyline(points: readonly Point[]): string {
  return `M${points.map((point) => point.join(' ')).join('L')}`;
}

function spanPaths({ from, to, feet, tail = [] }: Span): MarkPaths {
  const along = unit(minus(to, from));
  const back: Point = [-along[0], -along[1]];
  const isRoomy = Math.hypot(...minus(to, from)) >= roomy;
  const start = isRoomy ? from : plus(from, back, stub);
  const end = tail.length > 0 ? tail : isRoomy ? [] : [plus(to, along, stub)];
  return {
    witness: feet ? witness(feet[0], from) + witness(feet[1], to) : '',
    line: polyline([start, from, to, ...end]),
    heads: isRoomy ? head(from, back) + head(to, along) : head(from, along) + head(to, back),
    dot: null,
  };
}

function witness(foot: Point, arrow: Point): string {
  const along = unit(minus(arrow, foot));
  return polyline([plus(foot, along, clear), plus(arrow, along, beyond)]);
}

function arcPaths({ corner, radius, from_deg, to_deg }: Arc): MarkPaths {
  const at = (degrees: number): Point => {
    const angle = (degrees * Math.PI) / 180;
    return [corner[0] + radius * Math.cos(angle), corner[1] + radius * Math.sin(angle)];
  };
  const [from, to] = [at(from_deg), at(to_deg)];
  // Heads lie along chords as long as they are, or they would fly off the arc.
  const chord = ((headLength / radius) * 180) / Math.PI;
  return {
    witness: '',
    line: `M${from.join(' ')}A${radius} ${radius} 0 0 1 ${to.join(' ')}`,
    heads: head(from, minus(from, at(from_deg + chord))) + head(to, minus(to, at(to_deg - chord))),
    dot: null,
  };
}

function plus(point: Point, direction: Point, by: number): Point {
  return [point[0] + direction[0] * by, point[1] + direction[1] * by];
}

function minus(a: Point, b: Point): Point {
  return [a[0] - b[0], a[1] - b[1]];
}

function unit([x, y]: Point): Point {
  const length = Math.hypot(x, y);
  return length === 0 ? [0, 0] : [x / length, y / length];
}
