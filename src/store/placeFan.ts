import { type FanAtHand, withFan } from '../studies/sizing/fanChoice.ts';
import { without } from './drafts.ts';
import type { Entered } from './state.ts';

/** A fan from elsewhere takes the place of all present ones, fed with so many volts; what was typed for those goes. */
export function placeFan(
  { design, drafts, units }: Entered,
  fan: FanAtHand,
  supply_V: number,
): Partial<Entered> {
  const placed = withFan(design, fan);
  const own = [...Object.keys(fan).map((key) => `fan.${key}`), 'moreFans'];
  const rest = <T>(entries: Readonly<Record<string, T>>) =>
    own.reduce((kept, place) => without(kept, place), entries);
  return {
    design: { ...placed, fan: { ...placed.fan, supply_V } },
    drafts: rest(drafts),
    units: without(units, 'moreFans'),
  };
}
