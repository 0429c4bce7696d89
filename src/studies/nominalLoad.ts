import { splitLoad } from '../core/resistor/splitLoad.ts';
import type { Design } from '../model/design.ts';
import { toCore } from '../model/toCore.ts';

/** Nominal mean watts of all resistors of a design together. */
export function nominalLoad_W(design: Design): number {
  const { load, positions } = toCore(design);
  const { total_W } = splitLoad({
    kind: load.excitation,
    supply: load.supply,
    supplyTolerance: load.supplyTolerance,
    duty: load.duty,
    resistors: positions.map(({ part, on, power_W }) => ({ ...part, on, power_W })),
  });
  return total_W;
}
