import { defineCard } from '../card.ts';
import { stefanBoltzmann_WPerM2K4 } from './stefanBoltzmann_WPerM2K4.ts';

/** Linearised radiation coefficient at a mean temperature, as books work it by hand. */
export function radiationCoefficientAtMean_WPerM2K(emissivity: number, mean_K: number): number {
  return 4 * emissivity * stefanBoltzmann_WPerM2K4 * mean_K * mean_K * mean_K;
}

export const card = defineCard({
  id: 'radiationCoefficientAtMean',
  title: 'Radiation as a coefficient, linearised at the mean temperature',
  equation: 'h_r = 4·ε·σ·T_m³',
  result: { name: 'heat transfer coefficient', unit: 'W/(m²·K)', symbol: 'h_r' },
  symbols: { emissivity: 'ε', mean_K: 'T_m' },
  constants: [
    { symbol: 'σ', says: 'Stefan–Boltzmann constant', value: stefanBoltzmann_WPerM2K4, unit: 'W/(m²·K⁴)' },
  ],
  source: { key: 'lienhard', where: 'ch. 2' },
  range: { emissivity: [0, 1] },
  rangeFrom: 'source',
  scatter: { sigma: 0.006, from: 'computed' },
  assumes: ['greyDiffuse', 'isothermalPlate'],
  example: {
    given: { emissivity: 0.9, mean_K: 327.5 },
    printed: '7.17',
    kind: 'worked example',
    where: 'ex. 2.8; mean of 35 °C and the first pass 73.7 °C, which the book prints as 327 K',
  },
  evaluate: ({ emissivity, mean_K }) => radiationCoefficientAtMean_WPerM2K(emissivity, mean_K),
});
