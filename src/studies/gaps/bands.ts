import type { Grid, Point } from './contour.ts';

interface Corner extends Point {
  readonly value: number;
}

/**
 * The parts of a grid whose values lie between two levels, one polygon a cell: what fills the space between two contour
 * lines, with the same linear interpolation along the edges.
 */
export function bandPolygons({ xs, ys, values }: Grid, low: number, high: number): Point[][] {
  const found: Point[][] = [];
  for (let row = 0; row + 1 < ys.length; row++) {
    for (let column = 0; column + 1 < xs.length; column++) {
      const corners = [
        [row, column],
        [row, column + 1],
        [row + 1, column + 1],
        [row + 1, column],
      ].flatMap(([r = 0, c = 0]): Corner[] => {
        const value = values[r]?.[c] ?? null;
        return value === null ? [] : [{ x: xs[c] as number, y: ys[r] as number, value }];
      });
      if (corners.length < 4) continue;
      const above = clipped(corners, (value) => value - low);
      const between = clipped(above, (value) => high - value);
      if (between.length > 2) found.push(between.map(({ x, y }) => ({ x, y })));
    }
  }
  return found;
}

/** The part of a polygon where `height` is not negative. */
function clipped(corners: readonly Corner[], height: (value: number) => number): Corner[] {
  return corners.flatMap((here, i) => {
    const next = corners[(i + 1) % corners.length] as Corner;
    const [from, to] = [height(here.value), height(next.value)];
    const kept = from >= 0 ? [here] : [];
    return from >= 0 === to >= 0 ? kept : [...kept, between(here, next, from / (from - to))];
  });
}

function between(from: Corner, to: Corner, share: number): Corner {
  const at = (key: keyof Corner) => from[key] + share * (to[key] - from[key]);
  return { x: at('x'), y: at('y'), value: at('value') };
}
