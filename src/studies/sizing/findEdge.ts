import { brentRoot } from '../../core/solve/brentRoot.ts';
import type { Standing } from './standing.ts';

/** One variable of a search, with the way in which its maker would like it to go. */
export interface Range {
  readonly low: number;
  readonly high: number;
  /** Where the design stands now; it may lie outside. */
  readonly now: number;
  readonly want: 'most' | 'least';
  /** How the first looks are spread. `fromLow`: ever wider apart, for gaps. */
  readonly spread: 'even' | 'ratio' | 'fromLow';
}

export type Edge =
  /** The furthest that does, and what stops it right beyond. */
  | { readonly state: 'found'; readonly value: number; readonly here: Standing; readonly beyond: Standing }
  /** The very end of the range does. */
  | { readonly state: 'free'; readonly value: number; readonly here: Standing }
  /** Nothing in the range does: the best there is. */
  | { readonly state: 'out'; readonly value: number; readonly here: Standing };

const looks = 12;
/** What stands in for a design without an answer: as far from the target as anything. */
const hopeless_K = -1000;
/** This close above the target is at it. */
const close_K = 2e-3;

interface Look {
  /** Nil at the end of the range that nobody wants, one at the wanted end. */
  readonly at: number;
  readonly standing: Standing;
}

/**
 * The furthest value, in the wanted direction, at which the target is met: first looks over the whole range, then the edge
 * of the stretch that holds the present value, or of the one nearest to it. Brent's method where the answer is smooth,
 * halving where the box ends.
 */
export function findEdge(range: Range, standing: (value: number) => Standing): Edge {
  const value = (at: number) => valueAt(range, at);
  const seen: Look[] = [];
  const look = (at: number): Look => {
    const found = { at, standing: standing(value(at)) };
    seen.push(found);
    return found;
  };
  const start = placeOf(range);
  const places = [...Array.from({ length: looks + 1 }, (_, i) => i / looks), start];
  const row = [...new Set(places)].sort((a, b) => a - b).map(look);
  const from = nearestThatDoes(row, start) ?? climb(row, look);
  if (!does(from.standing)) return { state: 'out', value: value(from.at), here: from.standing };
  const all = [...seen].sort((a, b) => a.at - b.at);
  let inside = from;
  for (const next of all.slice(all.indexOf(from) + 1)) {
    if (!does(next.standing)) return { state: 'found', ...between(inside, next, look, value) };
    inside = next;
  }
  return { state: 'free', value: value(inside.at), here: inside.standing };
}

export function does({ left_K }: Standing): boolean {
  return left_K !== null && left_K >= 0;
}

function leftOf({ left_K }: Standing): number {
  return left_K ?? hopeless_K;
}

/** Among first looks, the one nearest to the present value that meets the target. */
function nearestThatDoes(row: readonly Look[], start: number): Look | null {
  let nearest: Look | null = null;
  for (const each of row) {
    if (!does(each.standing)) continue;
    if (nearest === null || Math.abs(each.at - start) < Math.abs(nearest.at - start)) nearest = each;
  }
  return nearest;
}

const golden = (Math.sqrt(5) - 1) / 2;

/** No look meets the target: the top between the neighbours of the best, which may. */
function climb(row: readonly Look[], look: (at: number) => Look): Look {
  let best = 0;
  for (const i of row.keys()) if (leftAt(row, i) > leftAt(row, best)) best = i;
  let top = row[best] as Look;
  if (top.standing.left_K === null) return top;
  let low = (row[best - 1] ?? top).at;
  let high = (row[best + 1] ?? top).at;
  for (let step = 0; step < 12 && high - low > 1e-4; step++) {
    const [a, b] = [look(high - golden * (high - low)), look(low + golden * (high - low))];
    const better = leftOf(a.standing) > leftOf(b.standing) ? a : b;
    if (better === a) high = b.at;
    else low = a.at;
    if (leftOf(better.standing) > leftOf(top.standing)) top = better;
    if (does(top.standing)) break;
  }
  return top;
}

function leftAt(row: readonly Look[], index: number): number {
  return leftOf((row[index] as Look).standing);
}

/** The edge between a value that does and the next that does not; what is told lies on the good side of it. */
function between(
  good: Look,
  bad: Look,
  look: (at: number) => Look,
  value: (at: number) => number,
): { value: number; here: Standing; beyond: Standing } {
  let inside = good;
  let outside = bad;
  const signed = (at: number) => {
    const found = at === good.at ? good : at === bad.at ? bad : look(at);
    if (found.at > inside.at && does(found.standing)) inside = found;
    if (found.at < outside.at && !does(found.standing)) outside = found;
    const left = leftOf(found.standing);
    return left >= 0 && left < close_K ? 0 : left;
  };
  brentRoot(signed, good.at, bad.at, 1e-10);
  return { value: value(inside.at), here: inside.standing, beyond: outside.standing };
}

/** Where the present value lies between the unwanted and the wanted end. */
function placeOf(range: Range): number {
  const { low, high, now, want, spread } = range;
  const inside = Math.min(high, Math.max(low, now));
  const share =
    spread === 'ratio' ? Math.log(inside / low) / Math.log(high / low) : (inside - low) / (high - low);
  const up = Number.isFinite(share) ? (spread === 'fromLow' ? Math.sqrt(share) : share) : 0;
  return want === 'most' ? up : 1 - up;
}

function valueAt({ low, high, want, spread }: Range, at: number): number {
  const up = want === 'most' ? at : 1 - at;
  if (up <= 0) return low;
  if (up >= 1) return high;
  if (spread === 'ratio') return low * (high / low) ** up;
  return low + (high - low) * (spread === 'fromLow' ? up * up : up);
}
