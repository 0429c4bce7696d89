import type { Limit } from '../../core/system/outcome.ts';

/**
 * What is asked of a box. `spare`: every rise of temperature may grow by the spare factor before its limit. `everyLimit`: that
 * many kelvin below every limit. `film`: that many below the film's, the others just hold. Makers' own figures (watts, volts)
 * and a sound that is judged just hold, whatever is asked.
 */
export type Target =
  | { readonly ask: 'spare'; readonly spareFactor: number }
  | { readonly ask: 'everyLimit' | 'film'; readonly margin_K: number };

/** What a limit that is no temperature counts for beside those that are: only the sign of what is left matters. */
const perLoad_K = 300;
const perDecibel_K = 10;
/** A limit that is met to rounding is met. */
const hair_K = 1e-9;

/**
 * Kelvin that one limit leaves until the target is missed, negative where it is. Continuous in the design.
 * @param base_K of the air that all rises are counted from
 * @param swing of films in pulses over their mean rise, 1 where the limits know of the pulses or there are none
 * @returns `null` for a limit of which nothing is asked
 */
export function left_K(target: Target, limit: Limit, base_K: number, swing: number): number | null {
  if (limit.key === 'stall') return null;
  if (limit.quantity === 'sound') return perDecibel_K * (limit.limit - limit.value);
  const { loadFactor, margin_K } = limit;
  if (limit.quantity !== 'temperature' || margin_K === null)
    return loadFactor === null ? null : perLoad_K * (Math.min(loadFactor, 100) - 1) + hair_K;
  const peak = limit.key === 'film' ? swing : 1;
  const rise_K = limit.value - base_K;
  if (target.ask !== 'spare') return margin_K - (peak - 1) * Math.max(0, rise_K) - askedOf(target, limit);
  if (loadFactor === null || loadFactor === 0) return margin_K;
  return (loadFactor / (target.spareFactor * peak) - 1) * peak * Math.max(rise_K, 1);
}

function askedOf(target: Exclude<Target, { ask: 'spare' }>, { key }: Limit): number {
  return target.ask === 'everyLimit' || key === 'film' || key === 'pulse' ? target.margin_K : 0;
}
