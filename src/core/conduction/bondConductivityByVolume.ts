import { defineCard } from '../card.ts';
import type { FilamentBond } from './bondConductivityWithFilament.ts';

/**
 * Conductivity of a bond line with spacer filaments as the mean by volume: the upper of two simple bounds.
 * A round filament as thick as the line fills π/4 of the box round it.
 */
export function bondConductivityByVolume(bond: FilamentBond): number {
  const volumeShare = ((Math.PI / 4) * bond.filament_m * bond.filamentLength_m) / bond.area_m2;
  return bond.adhesive_WPerMK + volumeShare * (bond.filament_WPerMK - bond.adhesive_WPerMK);
}

export const card = defineCard({
  id: 'bondConductivityByVolume',
  title: 'Bond line with spacer filaments, mean by volume',
  equation: 'k = k_a + (π/4)·s·(k_f − k_a); s = d·ℓ/A',
  result: { name: 'conductivity of the bond line', unit: 'W/(m·K)', symbol: 'k' },
  symbols: {
    adhesive_WPerMK: 'k_a',
    filament_WPerMK: 'k_f',
    filament_m: 'd',
    filamentLength_m: 'ℓ',
    area_m2: 'A',
  },
  source: { key: 'ownComputation', where: 'layers side by side' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: 0.02, from: 'common practice' },
  assumes: ['perfectBond', 'straightHeatFlow'],
  example: {
    given: {
      adhesive_WPerMK: 1,
      filament_WPerMK: 0.25,
      filament_m: 0.15e-3,
      filamentLength_m: 12e-3,
      area_m2: 20e-6,
    },
    printed: '0.947',
    kind: 'worked again',
    where: 'two 0.15 mm nylon filaments × 6 mm in 20 mm², worked by hand',
  },
  evaluate: bondConductivityByVolume,
});
