import type { Run, SystemInput } from '../core/system/input.ts';
import type { Limit, LimitKey, Solved } from '../core/system/outcome.ts';
import { solveSystem } from '../core/system/solveSystem.ts';

/** Watts that a box may carry, with the spare asked for on every rise of temperature. */
export interface RatedLoad {
  /** Of the load as given. */
  readonly factor: number;
  readonly total_W: number;
  /** Of every position; nil for one that is off. */
  readonly each_W: readonly number[];
  /** Limit that bounds it. */
  readonly boundBy: LimitKey;
}

const mostPasses = 40;

/**
 * Largest multiple of the load at which every limit still holds: temperatures with the spare factor on their rise, makers' own
 * figures (watts, volts) without. Found by solving again at the load it comes to, until it stands within a ten-thousandth.
 * @param swing of films in pulses, where it is known (`pulseSwing`): following them is most of the work
 * @returns `null` where nothing bounds the load, or the box has no answer
 */
export function ratedLoad(input: SystemInput, run: Run, swing?: number): RatedLoad | null {
  const first = solveSystem(input, swing === undefined ? run : { ...run, pulses: false });
  if (first.ok) return ratedFrom(first, input, run, swing);
  // Too much for any answer: a smaller load may have one. What has none for want of a fan or a way has none at any load.
  if (first.reason !== 'runaway' && first.reason !== 'notConverged') return null;
  return search((factor) => answerAt(input, run, factor), input, swing ?? 1);
}

/** The same where the answer at the load as given is there already. */
export function ratedFrom(
  first: Solved,
  input: SystemInput,
  run: Run,
  swing = pulseSwing(first),
): RatedLoad | null {
  return search((factor) => (factor === 1 ? first : answerAt(input, run, factor)), input, swing);
}

function answerAt(input: SystemInput, run: Run, factor: number): Solved | null {
  const outcome = solveSystem(scaled(input, factor), { ...run, pulses: false });
  return outcome.ok ? outcome : null;
}

/** Follows what the limits leave at each load; where that jumps or fails, halves between a load that holds and one that does not. */
function search(
  answer: (factor: number) => Solved | null,
  input: SystemInput,
  swing: number,
): RatedLoad | null {
  let factor = 1;
  let holds: { factor: number; outcome: Solved; bound: Bound } | null = null;
  let fails = Number.POSITIVE_INFINITY;
  for (let pass = 0; pass < mostPasses; pass++) {
    const outcome = answer(factor);
    const bound = outcome && tightest(outcome, input.limits.spareFactor, swing);
    if (outcome && bound === null) return null;
    let next = factor / 4;
    if (outcome && bound) {
      if (Math.abs(bound.factor - 1) < 1e-4) return rated(outcome, bound.factor, factor, bound.limit.key);
      next = factor * bound.factor;
      if (bound.factor > 1) holds = { factor, outcome, bound };
      else fails = Math.min(fails, factor);
      if (next < 1e-6) return rated(outcome, 0, factor, bound.limit.key);
    } else {
      fails = Math.min(fails, factor);
    }
    const low: number = holds?.factor ?? 0;
    if (holds && fails / low < 1 + 1e-4) break;
    factor =
      next > low && next < fails
        ? Math.min(next, 1e4)
        : low > 0
          ? Math.sqrt(low * Math.min(fails, 1e4))
          : 0.25 * fails;
    if (factor < 1e-7) break;
  }
  return holds ? rated(holds.outcome, 1, holds.factor, holds.bound.limit.key) : null;
}

function rated(outcome: Solved, last: number, factor: number, boundBy: LimitKey): RatedLoad {
  return {
    factor: factor * last,
    total_W: outcome.heat.total_W * last,
    each_W: outcome.heat.positions.map((position) => position.power_W * last),
    boundBy,
  };
}

/** The limit that bounds a rated load, as the last solve has it, with what is asked of it. */
export interface RatedBound {
  readonly limit: Limit;
  /** On rises of temperature; 1 for a maker's own figure. */
  readonly spare: number;
  /** Of the films in pulses, 1 for everything else. */
  readonly swing: number;
}

/** Solves once more at a rated load. @returns `null` where there is no answer, or nothing that bounds it */
export function ratedBound(
  input: SystemInput,
  run: Run,
  { factor }: RatedLoad,
  swing: number,
): RatedBound | null {
  const outcome = answerAt(input, run, factor);
  const bound = outcome && tightest(outcome, input.limits.spareFactor, swing);
  if (!bound) return null;
  const { limit } = bound;
  const isRise = limit.quantity === 'temperature';
  return { limit, spare: isRise ? input.limits.spareFactor : 1, swing: limit.key === 'film' ? swing : 1 };
}

function scaled(input: SystemInput, factor: number): SystemInput {
  return { ...input, load: { ...input.load, scale: input.load.scale * factor } };
}

/** Rise of the hottest film at the end of a pulse over its rise at the mean load: the same at any load. */
export function pulseSwing({ heat, pulse }: Solved): number {
  if (!pulse) return 1;
  const mean_K = (heat.positions[pulse.position]?.film_K ?? heat.entering_K) - heat.entering_K;
  return mean_K > 1e-9 ? Math.max(1, (pulse.peak_K - heat.entering_K) / mean_K) : 1;
}

interface Bound {
  readonly limit: Limit;
  /** The load may still grow by this. */
  readonly factor: number;
}

/** The limit that lets the load grow least. */
function tightest({ limits }: Solved, spare: number, swing: number): Bound | null {
  let bound: Bound | null = null;
  for (const limit of limits) {
    if (limit.loadFactor === null) continue;
    const peak = limit.key === 'film' ? swing : 1;
    const factor = limit.quantity === 'temperature' ? limit.loadFactor / (spare * peak) : limit.loadFactor;
    if (bound === null || factor < bound.factor) bound = { limit, factor };
  }
  return bound;
}
