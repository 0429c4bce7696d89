import { defineCard } from '../card.ts';

/**
 * Gap between vertical warm plates that moves the most heat by free convection from a given width, thin plates.
 * At this gap the Nusselt number on the gap is 1.307.
 */
export function optimumGap_m(height_m: number, rayleighHeight: number): number {
  return (2.714 * height_m) / Math.sqrt(Math.sqrt(rayleighHeight));
}

/** Nusselt number on the gap at the optimum gap. */
export const NUSSELT_AT_OPTIMUM_GAP = 1.307;

export const card = defineCard({
  id: 'optimumGap',
  title: 'Best gap between vertical plates in still air',
  equation: 'b = 2.714·L/Ra_L^(1/4); Nu_b = 1.307',
  result: { name: 'gap', unit: 'm', symbol: 'b' },
  symbols: { height_m: 'L', rayleighHeight: 'Ra_L' },
  source: { key: 'barCohenRohsenow1984', where: 'optimum of the symmetric isothermal channel' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: 0.1, from: 'memory' },
  assumes: ['isothermalPlate', 'stillRoom', 'longGroove'],
  example: {
    given: { height_m: 0.18, rayleighHeight: 1.8445e7 },
    printed: '0.00745',
    kind: 'worked example',
    where: 'Çengel ex. 9-3',
  },
  evaluate: ({ height_m, rayleighHeight }) => optimumGap_m(height_m, rayleighHeight),
});
