import type { Design } from '../design.ts';

/**
 * Inputs whose largest deviation the design itself states, either way and as a share; `row` is the row of a list.
 * The sag of a supply is its own tolerance: from none to all of it.
 */
export const tolerances: Readonly<Record<string, (design: Design, row: number) => number>> = {
  'parts[].R_Ohm': ({ parts }, row) => parts[row]?.tolerance ?? 0,
  // At one voltage or one current the watts go with the resistance.
  'positions[].power_W': ({ parts, positions }, row) => parts[positions[row]?.part ?? 0]?.tolerance ?? 0,
  'load.supply_V': ({ load }) => load.supplyTolerance,
  'load.supply_A': ({ load }) => load.supplyTolerance,
  'fan.supplySag': ({ fan }) => fan.supplySag,
};
