import { defineCard } from '../card.ts';
import { bejanGap_m } from './optimumForcedGap_m.ts';

/**
 * The same gap as `optimumForcedGap_m`, estimated where the limits of narrow and of wide gaps cross: the shortest way to it,
 * and a second opinion from below. Thin plates at one temperature; the full solution is a tenth wider.
 */
export function optimumForcedGapCrossing_m(
  length_m: number,
  dp_Pa: number,
  mu_PaS: number,
  diffusivity_m2PerS: number,
): number {
  return 2.73 * bejanGap_m(length_m, dp_Pa, mu_PaS, diffusivity_m2PerS);
}

export const card = defineCard({
  id: 'optimumForcedGapCrossing',
  title: 'Best gap between plates, from two limits',
  equation: 'b = 2.73·L·Be^(−1/4); Be = Δp·L²/(μ·α)',
  result: { name: 'gap', unit: 'm', symbol: 'b' },
  symbols: { length_m: 'L', dp_Pa: 'Δp', mu_PaS: 'μ', diffusivity_m2PerS: 'α' },
  source: { key: 'bejanSciubba1992', where: 'scaling in the abstract; constant from memory' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: 0.1, from: 'computed' },
  assumes: ['uniformWallTemperature'],
  example: {
    given: { length_m: 0.05, dp_Pa: 20, mu_PaS: 1.8372e-5, diffusivity_m2PerS: 2.1943e-5 },
    printed: '0.001293',
    kind: 'worked again',
    where: 'computed independently, air at 25 °C, Be 1.240·10⁸',
  },
  evaluate: ({ length_m, dp_Pa, mu_PaS, diffusivity_m2PerS }) =>
    optimumForcedGapCrossing_m(length_m, dp_Pa, mu_PaS, diffusivity_m2PerS),
});
