import { defineCard } from '../card.ts';

/**
 * Resistance from the foot of a long lead or tab to the air, all along its surface: a fin without end.
 * Good once the lead is longer than about 2.5·√(kA/hP); a shorter one is a fin and has a tip.
 */
export function longLeadResistance_KPerW(
  h_WPerM2K: number,
  perimeter_m: number,
  k_WPerMK: number,
  section_m2: number,
): number {
  return 1 / Math.sqrt(h_WPerM2K * perimeter_m * k_WPerMK * section_m2);
}

export const card = defineCard({
  id: 'longLeadResistance',
  title: 'Long lead cooled along its length',
  equation: 'R = 1/√(h·P·k·A)',
  result: { name: 'thermal resistance to the air', unit: 'K/W', symbol: 'R' },
  symbols: { h_WPerM2K: 'h', perimeter_m: 'P', k_WPerMK: 'k', section_m2: 'A' },
  source: { key: 'incropera', where: 'ch. 3, infinite fin' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: null, from: 'not stated' },
  assumes: ['oneDimensionalFin', 'steady'],
  example: {
    given: {
      h_WPerM2K: 100,
      perimeter_m: Math.PI * 5e-3,
      k_WPerMK: 398,
      section_m2: (Math.PI * 5e-3 * 5e-3) / 4,
    },
    printed: '9.0',
    kind: 'from memory',
    where: 'ex. 3.9 (from memory): copper rod of 5 mm, 75 K drive 8.3 W',
  },
  evaluate: ({ h_WPerM2K, perimeter_m, k_WPerMK, section_m2 }) =>
    longLeadResistance_KPerW(h_WPerM2K, perimeter_m, k_WPerMK, section_m2),
});
