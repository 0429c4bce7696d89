import type { Grid } from '../../src/studies/gaps/contour.ts';

/** A quantity on an even square grid. */
export function gridOf(of: (x: number, y: number) => number | null, count = 21, low = -1, high = 1): Grid {
  const at = Array.from({ length: count }, (_, i) => low + ((high - low) * i) / (count - 1));
  return { xs: at, ys: at, values: at.map((y) => at.map((x) => of(x, y))) };
}
