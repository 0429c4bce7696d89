import type { LimitKey } from '../core/system/outcome.ts';

/** Where a limit stands, as a sentence says it: "6 K at the derating line". */
export const limitPlaces: Readonly<Record<LimitKey, string>> = {
  film: 'the film',
  pulse: 'the film in the pulse',
  derating: 'the derating line',
  joint: 'the solder joints',
  bond: 'the bond lines',
  touch: 'touchable metal',
  sheet: 'the plastic beside the sinks',
  wall: 'the outside of the box',
  exhaust: 'the exhaust air',
  sound: 'the sound',
  voltage: 'the element voltage',
  stall: 'the stall of the fan',
  ratedPower: 'the rated power',
};
