import { checkDesign } from '../../model/check.ts';
import type { Design } from '../../model/design.ts';
import { splitPath } from '../../model/path.ts';
import type { Problem } from '../../model/problem.ts';
import type { Place } from './places.ts';

/** Narrowest gap between fins that the checks take, with a hair to spare. */
const leastFinGap_m = 5.001e-5;
const mostMends = 6;
const mostHalvings = 6;

/**
 * A draw that cannot be built is brought to the nearest one that can: the measure that does not fit is taken as near as it
 * fits, as its maker would dress it. Where that leads nowhere all of the draw moves towards the drawing, half of the way
 * each time. @returns whether anything had to move
 */
export function bringBack(draft: Design, places: readonly Place[]): boolean {
  if (checkDesign(draft).length === 0) return false;
  for (let mend = 0; mend < mostMends; mend++) {
    const problems = checkDesign(draft);
    if (problems.length === 0) return true;
    for (const problem of problems) mendOne(draft, problem);
  }
  for (let halving = 0; halving <= mostHalvings; halving++) {
    const share = halving === mostHalvings ? 0 : 0.5;
    for (const place of places) {
      const { key, nominal } = place;
      place.in[key] = nominal + share * ((place.in[key] as number) - nominal);
    }
    if (checkDesign(draft).length === 0) return true;
  }
  return true;
}

function mendOne(draft: Design, { path, code, data }: Problem): void {
  if (code === 'finsTooMany' || code === 'finsTooThick') {
    const { sink } = draft;
    sink.finThickness_m = (sink.width_m - (sink.finCount - 1) * leastFinGap_m) / sink.finCount;
    return;
  }
  const bound = 'most_m' in data ? data.most_m : 'needed_m' in data ? data.needed_m : null;
  if (bound === null) return;
  const keys = [...splitPath(path)];
  const last = keys.pop() as string;
  const parent = keys.reduce<unknown>((here, key) => (here as Record<string, unknown>)[key], draft);
  (parent as Record<string, number>)[last] = bound;
}
