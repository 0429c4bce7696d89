import type { Solved } from '../core/system/outcome.ts';
import type { Design } from '../model/design.ts';
import type { RatedLoad } from '../studies/ratedLoad.ts';
import type { Ratings, UnitSystem } from './types.ts';
import { limitLabels } from './wording.ts';
import { temperature, times, watts } from './words.ts';

/**
 * Watts that this very box may carry with its fan running and the spare the user wants. Temperatures are held with the spare
 * factor, makers' own figures (watts, volts) without.
 */
export function ratings(
  design: Design,
  { heat }: Solved,
  rated: RatedLoad | null,
  system: UnitSystem,
): Ratings | null {
  if (rated === null || heat.total_W <= 0) return null;
  const spare = times(design.limits.spareFactor);
  const total = watts(rated.total_W, system);
  const each = eachText(
    rated.each_W.filter((power_W) => power_W > 0),
    system,
  );
  const room = temperature(heat.room_K, system);
  const boundBy = limitLabels[rated.boundBy].toLowerCase();
  return {
    sentence: `With its fan running, in a room of up to ${room}, this box may carry ${total} in all, ${each}, with ${spare} spare on every temperature rise; the ${boundBy} bounds it.`,
    factor: rated.factor,
    total,
    each,
    room,
    spare,
    boundBy,
  };
}

function eachText(powers_W: readonly number[], system: UnitSystem): string {
  if (powers_W.length === 0) return 'none for any resistor';
  const low = watts(Math.min(...powers_W), system);
  const high = watts(Math.max(...powers_W), system);
  return low === high ? `${high} for each resistor` : `${low} to ${high} for each resistor by its place`;
}
