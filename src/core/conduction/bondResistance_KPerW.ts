import { defineCard } from '../card.ts';

/**
 * Resistance of an adhesive joint between two flat faces: layer thinned out by voids, and a contact term at each face.
 * Voids are counted as lost area. Adhesives measured to the open standard for thin layers show a finite contact term
 * and often less conductivity than their data sheet says, so pass a reduced design value.
 * @param voidShare share of the layer that is air, 0 up to but not including 1
 */
export function bondResistance_KPerW(
  thickness_m: number,
  k_WPerMK: number,
  area_m2: number,
  voidShare: number,
  contactPerFace_m2KPerW: number,
): number {
  return (thickness_m / (k_WPerMK * (1 - voidShare)) + 2 * contactPerFace_m2KPerW) / area_m2;
}

export const card = defineCard({
  id: 'bondResistance',
  title: 'Bond line between two flat faces',
  equation: 'R = (t/(k·(1 − v)) + 2·r_c)/A',
  result: { name: 'thermal resistance', unit: 'K/W', symbol: 'R' },
  symbols: { thickness_m: 't', k_WPerMK: 'k', area_m2: 'A', voidShare: 'v', contactPerFace_m2KPerW: 'r_c' },
  source: { key: 'interpackBond2007', where: 'abstract: adhesives have a layer term and a contact term' },
  range: { voidShare: [0, 0.3] },
  rangeFrom: 'common practice',
  scatter: { sigma: 0.2, from: 'memory' },
  assumes: ['perfectBond', 'straightHeatFlow', 'steady'],
  example: {
    given: {
      thickness_m: 0.15e-3,
      k_WPerMK: 1,
      area_m2: 20e-6,
      voidShare: 0,
      contactPerFace_m2KPerW: 0,
    },
    printed: '7.500',
    kind: 'worked again',
    where: '0.15 mm at 1 W/mK on 20 mm², worked by hand',
  },
  evaluate: ({ thickness_m, k_WPerMK, area_m2, voidShare, contactPerFace_m2KPerW }) =>
    bondResistance_KPerW(thickness_m, k_WPerMK, area_m2, voidShare, contactPerFace_m2KPerW),
});
