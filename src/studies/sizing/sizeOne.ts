import type { Design } from '../../model/design.ts';
import { withValues } from '../vary.ts';
import { type Edge, findEdge } from './findEdge.ts';
import type { Sizer } from './sizers.ts';
import { type Standing, standingOf, withoutPulses, withPulses } from './standing.ts';
import type { Target } from './target.ts';

/** How far one measure of a design may go. The result, put back into the design, meets the target. */
export function sizeOne(design: Design, target: Target, sizer: Sizer): Edge {
  return design.load.duty < 1
    ? sizeInPulses(design, target, sizer)
    : findEdge(sizer, (value) => standingOf(withValues(design, sizer.values(value)), target, withoutPulses));
}

const rounds = 6;
/** As near to the asked margin as a load in pulses is brought, for every look at it costs much. */
const near_K = 0.02;

/**
 * Films are followed through their pulses only where it counts: the search knows by how much they swing, first as at the
 * present value, then along the line through the last two values looked at, until what it finds stands as foretold.
 */
function sizeInPulses(design: Design, target: Target, sizer: Sizer): Edge {
  const put = (value: number) => withValues(design, sizer.values(value));
  const known: Swing[] = [{ at: sizer.now, swing: standingOf(put(sizer.now), target, withPulses).swing }];
  let off_K = 0;
  const quick = (value: number, by_K: number) =>
    moved(standingOf(put(value), target, withoutPulses, swingAt(known, value)), by_K);
  for (let round = 1; ; round++) {
    const edge = findEdge(sizer, (value) => quick(value, off_K));
    const exact = standingOf(put(edge.value), target, withPulses);
    const miss_K = exact.left_K === null ? 0 : exact.left_K - (edge.here.left_K ?? 0);
    if (Math.abs(miss_K) < near_K || round === rounds) return settled(edge, exact);
    known.push({ at: edge.value, swing: exact.swing });
    off_K = (exact.left_K ?? 0) - (quick(edge.value, 0).left_K ?? 0);
  }
}

interface Swing {
  readonly at: number;
  readonly swing: number;
}

function swingAt(known: readonly Swing[], value: number): number {
  const last = known.at(-1) as Swing;
  const before = known.at(-2) ?? last;
  const slope = last.at === before.at ? 0 : (last.swing - before.swing) / (last.at - before.at);
  return Math.max(1, last.swing + slope * (value - last.at));
}

function moved(standing: Standing, by_K: number): Standing {
  return standing.left_K === null ? standing : { ...standing, left_K: standing.left_K + by_K };
}

/** The answer as it is with pulses; one that does not do there after all is out of reach. */
function settled(edge: Edge, exact: Standing): Edge {
  const isMet = exact.left_K !== null && exact.left_K >= -near_K;
  if (edge.state === 'out' || isMet) return { ...edge, here: exact };
  return { state: 'out', value: edge.value, here: exact };
}
