export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Values on a grid of lines that need not be even: `values[row][column]` at `(xs[column], ys[row])`. */
export interface Grid {
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  /** `null` where there is none: no contour runs through cells that touch it. */
  readonly values: readonly (readonly (number | null)[])[];
}

interface Crossing extends Point {
  /** Names the edge of the grid it lies on; cells on both sides of it find the same. */
  readonly edge: string;
}

type Segment = readonly [Crossing, Crossing];

/**
 * Lines along which a quantity has this level: marching squares with linear interpolation along the edges of the grid. A
 * saddle is parted by the mean of its corners. Closed lines end where they begin.
 */
export function contourLines({ xs, ys, values }: Grid, level: number): Point[][] {
  const segments: Segment[] = [];
  for (let row = 0; row + 1 < ys.length; row++) {
    for (let column = 0; column + 1 < xs.length; column++) {
      segments.push(...cellSegments({ xs, ys, values }, level, row, column));
    }
  }
  return joined(segments);
}

function cellSegments({ xs, ys, values }: Grid, level: number, row: number, column: number): Segment[] {
  // Round the cell: lower left, lower right, upper right, upper left.
  const corners = [
    [row, column],
    [row, column + 1],
    [row + 1, column + 1],
    [row + 1, column],
  ] as const;
  const heights: number[] = [];
  for (const [r, c] of corners) {
    const value = values[r]?.[c] ?? null;
    if (value === null) return [];
    heights.push(value - level);
  }
  const crossings = heights.flatMap((height, i): Crossing[] => {
    const j = (i + 1) % 4;
    const next = heights[j] as number;
    if (height >= 0 === next >= 0) return [];
    const share = height / (height - next);
    const [r0, c0] = corners[i] as readonly [number, number];
    const [r1, c1] = corners[j] as readonly [number, number];
    return [
      {
        x: between(xs[c0], xs[c1], share),
        y: between(ys[r0], ys[r1], share),
        edge: `${Math.min(r0, r1)} ${Math.min(c0, c1)} ${r0 === r1 ? 'along' : 'up'}`,
      },
    ];
  });
  const [a, b, c, d] = crossings;
  if (!a || !b) return [];
  if (!c || !d) return [[a, b]];
  // A saddle: the middle goes with the first corner, or parts it off.
  const middle = heights.reduce((sum, height) => sum + height, 0);
  return (heights[0] as number) >= 0 === middle >= 0
    ? [
        [a, b],
        [c, d],
      ]
    : [
        [d, a],
        [b, c],
      ];
}

function between(from: number | undefined, to: number | undefined, share: number): number {
  return (from ?? 0) + share * ((to ?? 0) - (from ?? 0));
}

/** Segments that meet on an edge become one line. */
function joined(segments: readonly Segment[]): Point[][] {
  const at = new Map<string, Segment[]>();
  for (const segment of segments) {
    for (const { edge } of segment) at.set(edge, [...(at.get(edge) ?? []), segment]);
  }
  const used = new Set<Segment>();
  const follow = (start: Crossing): Crossing[] => {
    const line = [start];
    for (let here = start; ; ) {
      const next = at.get(here.edge)?.find((segment) => !used.has(segment));
      if (next === undefined) return line;
      used.add(next);
      here = next[0].edge === here.edge ? next[1] : next[0];
      line.push(here);
    }
  };
  const ends = segments.flat().filter(({ edge }) => at.get(edge)?.length === 1);
  // Open lines from their ends first; what is left then is closed.
  return [...ends, ...segments.map(([start]) => start)]
    .map((start) => follow(start))
    .filter((line) => line.length > 1)
    .map((line) => line.map(({ x, y }) => ({ x, y })));
}
