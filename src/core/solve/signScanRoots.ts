import { brentRoot } from './brentRoot.ts';

export interface Crossing {
  readonly root: number;
  /** Whether `f` goes from below zero to above it. */
  readonly rising: boolean;
}

/**
 * Every place between `low` and `high` where `f` changes sign: signs on an even grid, then Brent in each interval that
 * holds a change. Two crossings inside one interval cancel and go unseen, so the grid must be finer than the features of `f`.
 */
export function signScanRoots(
  f: (x: number) => number,
  low: number,
  high: number,
  intervals: number,
  tolerance: number,
): Crossing[] {
  const crossings: Crossing[] = [];
  let left = low;
  let before = f(left);
  for (let i = 1; i <= intervals; i++) {
    const right = low + ((high - low) * i) / intervals;
    const here = f(right);
    if (before > 0 !== here > 0) {
      const found = brentRoot(f, left, right, tolerance);
      if (found.ok) crossings.push({ root: found.root, rising: here > 0 });
    }
    left = right;
    before = here;
  }
  return crossings;
}
