import { step_m } from './finRules.ts';
import type { FinPoint } from './finTrial.ts';

const looks = 5;

/**
 * Coolest height of one set of fins between two bounds: looks spread over the range, then halfway to both neighbours of the
 * best, again and again. Ends lie on the bounds themselves, all else on whole steps.
 * @returns all that was looked at, coolest first
 */
export function bestHeight(
  low_m: number,
  high_m: number,
  look: (height_m: number) => FinPoint | null,
): FinPoint[] {
  const seen = new Map<number, FinPoint | null>();
  const at = (height_m: number) => {
    const round_m = Math.round(height_m / step_m) * step_m;
    const height = Number(Math.min(high_m, Math.max(low_m, round_m)).toPrecision(12));
    const found = seen.get(height);
    if (found !== undefined) return found;
    const looked = look(height);
    seen.set(height, looked);
    return looked;
  };
  for (let i = looks - 1; i >= 0; i--) at(low_m + ((high_m - low_m) * i) / (looks - 1));
  for (;;) {
    const known = [...seen].flatMap(([, point]) => point ?? []);
    const best = coolestFirst(known)[0];
    if (best === undefined) return [];
    const heights = [...seen.keys()].sort((a, b) => a - b);
    const here = heights.indexOf(best.height_m);
    const before = seen.size;
    for (const next of [heights[here - 1], heights[here + 1]])
      if (next !== undefined) at((best.height_m + next) / 2);
    if (seen.size === before) return coolestFirst(known);
  }
}

export function coolestFirst(points: readonly FinPoint[]): FinPoint[] {
  return [...points].sort((a, b) => a.film_K - b.film_K);
}
