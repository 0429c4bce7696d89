import { defineCard } from '../card.ts';

/**
 * Gap between plates that takes most heat out of a given volume at a given pressure. Thin plates at one temperature;
 * the constant is our own optimum of the boundary-layer solution (3.03 published, 2.73 where two asymptotes cross).
 */
export function optimumForcedGap_m(
  length_m: number,
  dp_Pa: number,
  mu_PaS: number,
  diffusivity_m2PerS: number,
): number {
  return 3.031 * bejanGap_m(length_m, dp_Pa, mu_PaS, diffusivity_m2PerS);
}

/** L·Be^−¼, the gap that every such optimum is a multiple of, with Be = Δp·L²/(μ·α). */
export function bejanGap_m(
  length_m: number,
  dp_Pa: number,
  mu_PaS: number,
  diffusivity_m2PerS: number,
): number {
  const bejan = (dp_Pa * length_m * length_m) / (mu_PaS * diffusivity_m2PerS);
  return length_m / Math.sqrt(Math.sqrt(bejan));
}

export const card = defineCard({
  id: 'optimumForcedGap',
  title: 'Best gap between plates at a given pressure',
  equation: 'b = 3.031·L·Be^(−1/4); Be = Δp·L²/(μ·α)',
  result: { name: 'gap', unit: 'm', symbol: 'b' },
  symbols: { length_m: 'L', dp_Pa: 'Δp', mu_PaS: 'μ', diffusivity_m2PerS: 'α' },
  source: { key: 'bejanSciubba1992', where: 'scaling in the abstract; constant computed' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: 0.05, from: 'computed' },
  assumes: ['uniformWallTemperature'],
  example: {
    given: { length_m: 0.05, dp_Pa: 20, mu_PaS: 1.8372e-5, diffusivity_m2PerS: 2.1943e-5 },
    printed: '0.001436',
    kind: 'worked again',
    where: 'computed independently, air at 25 °C, Be 1.240·10⁸',
  },
  evaluate: ({ length_m, dp_Pa, mu_PaS, diffusivity_m2PerS }) =>
    optimumForcedGap_m(length_m, dp_Pa, mu_PaS, diffusivity_m2PerS),
});
