import type { LimitKey } from '../../core/system/outcome.ts';
import type { Change, Settings } from './change.ts';
import type { Weighed } from './weigh.ts';

/** What one change does, or several made together. */
export interface Gain {
  /** By which the hottest film is cooler. */
  readonly film_K: number;
  /** By which the limit that gives first leaves more; of the film where that limit is no temperature. */
  readonly limit_K: number;
  readonly sound_dB: number;
  readonly flow_m3PerS: number;
}

export interface Tried extends Change {
  readonly after: Weighed;
  /** `null` where one of the two has no answer. */
  readonly gain: Gain | null;
}

/** Several changes at once. */
export interface Together {
  readonly changes: readonly Tried[];
  readonly values: Settings;
  readonly after: Weighed;
  readonly gain: Gain | null;
  /** What they gain one by one. */
  readonly sum_K: number;
}

/** The limit whose kelvin count: the one that gives first, if it is a temperature. `null`: the hottest film itself. */
export function countedLimit(before: Weighed): LimitKey | null {
  return before.ok && before.margins_K[before.limit] !== undefined ? before.limit : null;
}

export function gainOf(before: Weighed, after: Weighed): Gain | null {
  if (!before.ok || !after.ok) return null;
  const film_K = before.outputs.film_K - after.outputs.film_K;
  const key = countedLimit(before);
  const [had_K, has_K] = key === null ? [] : [before.margins_K[key], after.margins_K[key]];
  return {
    film_K,
    limit_K: had_K === undefined || has_K === undefined ? film_K : has_K - had_K,
    sound_dB: after.outputs.sound_dBA - before.outputs.sound_dBA,
    flow_m3PerS: after.outputs.flow_m3PerS - before.outputs.flow_m3PerS,
  };
}

/** Less than this is no gain. */
export const leastGain_K = 0.05;
/** More sound than this is heard. */
const leastSound_dB = 0.5;

/** Whether a fan turns before and after is no matter of loudness. */
export function isLouder({ gain }: { readonly gain: Gain | null }): boolean {
  return gain !== null && gain.sound_dB > leastSound_dB;
}

/**
 * Most kelvin first; less load, which is no change of the box, after all others. Where the present design has no answer, the
 * coolest film first.
 */
export function byGain(a: Tried, b: Tried): number {
  return Number(isLast(a)) - Number(isLast(b)) || worth(b) - worth(a);
}

export function isLast({ costs }: Change): boolean {
  return costs.includes('less');
}

function worth({ gain, after }: Tried): number {
  if (gain !== null) return gain.limit_K;
  return after.ok ? -after.outputs.film_K : -1e9;
}

/** Changes that help, the best first, none of which gets in the way of a better one. */
export function bestApart(ranked: readonly Tried[], count: number): Tried[] {
  const taken = new Set<string>();
  const best: Tried[] = [];
  for (const each of ranked) {
    const places = touched(each);
    if (best.length === count) break;
    if (isLast(each) || !helps(each) || places.some((place) => taken.has(place))) continue;
    for (const place of places) taken.add(place);
    best.push(each);
  }
  return best;
}

/** One set of fins can be cut; two changes of it, each within the rules, may break them together. */
const finPaths = ['sink.finCount', 'sink.finThickness_m', 'sink.finHeight_m', 'sink.width_m'];
/** Tabs there are no more, or that there were not before. */
const tabPaths = ['secondFace.tabLength_m', 'secondFace.tabThickness_m'];

/** What a change takes for itself when others are made with it. */
function touched({ values }: Change): string[] {
  return Object.keys(values).flatMap((path) => {
    if (finPaths.includes(path)) return ['fins'];
    return path === 'secondFace.way' ? [path, ...tabPaths] : [path];
  });
}

/** It gains something, or brings an answer where there was none. */
export function helps({ gain, after, fault }: Tried): boolean {
  return fault === undefined && after.ok && (gain === null || gain.limit_K >= leastGain_K);
}
