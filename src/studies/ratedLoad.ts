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
  return first.ok ? ratedFrom(first, input, run, swing) : null;
}

/** The same where the answer at the load as given is there already. */
export function ratedFrom(
  first: Solved,
  input: SystemInput,
  run: Run,
  swing = pulseSwing(first),
): RatedLoad | null {
  const quick: Run = { ...run, pulses: false };
  let factor = 1;
  let outcome: Solved = first;
  for (let pass = 0; pass < mostPasses; pass++) {
    const bound = tightest(outcome, input.limits.spareFactor, swing);
    if (bound === null) return null;
    const next = factor * bound.factor;
    const found = Math.abs(bound.factor - 1) < 1e-4;
    if (found || next < 1e-6) return rated(outcome, found ? bound.factor : 0, factor, bound.limit.key);
    factor = Math.min(next, 1e4);
    const again = solveSystem(scaled(input, factor), quick);
    if (!again.ok) {
      // Beyond anything meaningful: come back by halves.
      factor = Math.sqrt(factor * (factor / bound.factor));
      const half = solveSystem(scaled(input, factor), quick);
      if (!half.ok) return null;
      outcome = half;
    } else {
      outcome = again;
    }
  }
  return null;
}

function rated(outcome: Solved, last: number, factor: number, boundBy: LimitKey): RatedLoad {
  return {
    factor: factor * last,
    total_W: outcome.heat.total_W * last,
    each_W: outcome.heat.positions.map((position) => position.power_W * last),
    boundBy,
  };
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
