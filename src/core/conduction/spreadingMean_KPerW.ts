import { defineCard } from '../card.ts';
import { leeAside, leeSymbols } from './leeSymbols.ts';
import {
  leeExample,
  leeRange,
  prepareSpreading,
  type Spreading,
  spreadingDepthFactor,
} from './spreadingLee.ts';

/**
 * Spreading resistance from the mean of the plate to the mean of the source on it, Lee's closed form.
 * Against the exact series it is −19 … +13 % within the stated range, without a lean to either side.
 */
export function spreadingMean_KPerW(spreading: Spreading, k_WPerMK: number, h_WPerM2K: number): number {
  return (spreading.mean_PerM / k_WPerMK) * spreadingDepthFactor(spreading, k_WPerMK, h_WPerM2K);
}

export const card = defineCard({
  id: 'spreadingMean',
  title: 'Spreading under a small source, mean (Lee and others 1995)',
  equation:
    'R = 0.5·(1 − ε)^1.5·φ/(√π·k·ε·r); φ = (Bi·tanh(λ·τ) + λ)/(Bi + λ·tanh(λ·τ)); λ = π + 1/(√π·ε); r = √(A/π)',
  result: { name: 'spreading resistance to the mean of the source', unit: 'K/W', symbol: 'R' },
  symbols: leeSymbols,
  aside: leeAside,
  source: { key: 'lee1995', where: 'closed form for the average' },
  range: leeRange,
  rangeFrom: 'computed',
  scatter: { sigma: 0.06, from: 'computed' },
  assumes: ['centredSource', 'uniformFlux', 'steady'],
  example: {
    given: leeExample,
    printed: '0.25846',
    kind: 'worked again',
    where: 'aluminium 40 × 40 × 3 mm, source 10 × 10 mm, 1000 W/m²K; separate computation of the same form',
  },
  evaluate: (given) => {
    const plateRadius_m = Math.sqrt(given.plateArea_m2 / Math.PI);
    const sourceArea_m2 = given.radiusRatio * given.radiusRatio * given.plateArea_m2;
    const spreading = prepareSpreading(
      sourceArea_m2,
      given.plateArea_m2,
      given.thicknessRatio * plateRadius_m,
    );
    return spreadingMean_KPerW(spreading, given.k_WPerMK, (given.biot * given.k_WPerMK) / plateRadius_m);
  },
});
