import type { Limit, Solved } from '../core/system/outcome.ts';
import type { Design } from '../model/design.ts';
import type { Ratings, UnitSystem } from './types.ts';
import { limitLabels } from './wording.ts';
import { temperature, times, watts } from './words.ts';

/**
 * Watts that this very box may carry with its fan running and the spare the user wants: the outcome's load factors
 * times its watts. Temperatures are held with the spare factor, makers' own figures (watts, volts) without.
 */
export function ratings(design: Design, outcome: Solved, system: UnitSystem): Ratings | null {
  const spare = design.limits.spareFactor;
  let bound: Limit | null = null;
  let factor = Number.POSITIVE_INFINITY;
  for (const limit of outcome.limits) {
    if (limit.loadFactor === null) continue;
    const own = limit.quantity === 'temperature' ? limit.loadFactor / spare : limit.loadFactor;
    if (own < factor) [bound, factor] = [limit, own];
  }
  const { heat } = outcome;
  if (bound === null || heat.total_W <= 0) return null;
  const total = watts(heat.total_W * factor, system);
  const each = eachText(
    heat.positions.filter((p) => p.power_W > 0).map((p) => p.power_W * factor),
    system,
  );
  const room = temperature(heat.room_K, system);
  const boundBy = limitLabels[bound.key].toLowerCase();
  return {
    sentence: `With its fan running, in a room of up to ${room}, this box may carry ${total} in all, ${each}, with ${times(spare)} spare on every temperature rise; the ${boundBy} bounds it.`,
    factor,
    total,
    each,
    room,
    spare: times(spare),
    boundBy,
  };
}

function eachText(powers_W: readonly number[], system: UnitSystem): string {
  const low = watts(Math.min(...powers_W), system);
  const high = watts(Math.max(...powers_W), system);
  return low === high ? `${high} for each resistor` : `${low} to ${high} for each resistor by its place`;
}
