import { type LoadSplit, splitLoad } from '../resistor/splitLoad.ts';
import type { SystemInput } from './input.ts';

/** Watts, volts and amps of every resistor of a box, at the scale of its load. */
export function loadOf({ load, positions }: SystemInput): LoadSplit {
  return splitLoad({
    kind: load.excitation,
    supply: load.supply * Math.sqrt(load.scale),
    supplyTolerance: load.supplyTolerance,
    duty: load.duty,
    resistors: positions.map(({ part, on, power_W }) => ({
      R_Ohm: part.R_Ohm,
      tolerance: part.tolerance,
      on,
      power_W: power_W * load.scale,
    })),
  });
}

/** Nominal mean watts of all resistors together. */
export function nominalTotal_W(input: SystemInput): number {
  return loadOf(input).total_W;
}
