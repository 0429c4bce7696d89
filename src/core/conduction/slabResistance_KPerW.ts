import { defineCard } from '../card.ts';

/**
 * Resistance of a flat layer crossed straight: ceramic, solder, coating, a tab or a pin along its length.
 * Thin wide layers only; a source smaller than the layer needs the spreading resistance on top.
 */
export function slabResistance_KPerW(thickness_m: number, k_WPerMK: number, area_m2: number): number {
  return thickness_m / (k_WPerMK * area_m2);
}

export const card = defineCard({
  id: 'slabResistance',
  title: 'Conduction straight through a layer',
  equation: 'R = t/(k·A)',
  result: { name: 'thermal resistance', unit: 'K/W', symbol: 'R' },
  symbols: { thickness_m: 't', k_WPerMK: 'k', area_m2: 'A' },
  source: { key: 'incropera', where: 'ch. 3, plane wall' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: null, from: 'not stated' },
  assumes: ['straightHeatFlow', 'tabWithoutLoss', 'steady'],
  example: {
    given: { thickness_m: 0.6e-3, k_WPerMK: 27, area_m2: 6.35e-3 * 3.15e-3 },
    printed: '1.111',
    kind: 'worked again',
    where: 'alumina body 6.35 × 3.15 × 0.6 mm, worked by hand',
  },
  evaluate: ({ thickness_m, k_WPerMK, area_m2 }) => slabResistance_KPerW(thickness_m, k_WPerMK, area_m2),
});
