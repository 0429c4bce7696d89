import { brentRoot } from './brentRoot.ts';

export interface Crossing {
  readonly root: number;
  /** Whether `f` goes from below zero to above it. */
  readonly rising: boolean;
}

/**
 * Every place where `f` changes sign from one of `places` to the next, found by Brent between them. Two crossings between the
 * same places cancel and go unseen, so the places must be closer than the features of `f`.
 * @param places rising
 */
export function signScanRoots(
  f: (x: number) => number,
  places: readonly number[],
  tolerance: number,
): Crossing[] {
  const crossings: Crossing[] = [];
  let left = 0;
  let before = Number.NaN;
  places.forEach((right, i) => {
    const here = f(right);
    if (i > 0 && before > 0 !== here > 0) {
      const found = brentRoot(f, left, right, tolerance);
      if (found.ok) crossings.push({ root: found.root, rising: here > 0 });
    }
    left = right;
    before = here;
  });
  return crossings;
}

/** Places at even steps, both ends among them. */
export function evenPlaces(low: number, high: number, intervals: number): number[] {
  return Array.from({ length: intervals + 1 }, (_, i) => low + ((high - low) * i) / intervals);
}
