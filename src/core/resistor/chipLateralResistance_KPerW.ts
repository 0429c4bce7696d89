import { defineCard } from '../card.ts';

/** From the mean of an evenly heated chip to its two end terminals, sideways through the ceramic. */
export function chipLateralResistance_KPerW(
  length_m: number,
  k_WPerMK: number,
  width_m: number,
  thickness_m: number,
): number {
  return length_m / (12 * k_WPerMK * width_m * thickness_m);
}

export const card = defineCard({
  id: 'chipLateral',
  title: 'Chip to its terminals',
  equation: 'R = L/(12·k·w·t); both ends, mean temperature',
  result: { name: 'thermal resistance', unit: 'K/W', symbol: 'R' },
  symbols: { length_m: 'L', k_WPerMK: 'k', width_m: 'w', thickness_m: 't' },
  source: { key: 'incropera', where: 'ch. 3, plane wall with even generation' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: 0.1, from: 'common practice' },
  assumes: ['evenFilmHeat', 'steady'],
  example: {
    given: { length_m: 6.35e-3, k_WPerMK: 27, width_m: 3.15e-3, thickness_m: 0.6e-3 },
    printed: '10.37',
    kind: 'worked again',
    where: 'worked by hand',
  },
  evaluate: ({ length_m, k_WPerMK, width_m, thickness_m }) =>
    chipLateralResistance_KPerW(length_m, k_WPerMK, width_m, thickness_m),
});
