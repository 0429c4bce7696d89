import { defineCard } from '../card.ts';
import { leeAside, leeSymbols } from './leeSymbols.ts';

/** What of the closed-form spreading resistance does not change with the flow. */
export interface Spreading {
  /** Radius of the circle as large as the plate. */
  readonly plateRadius_m: number;
  readonly lambda: number;
  /** tanh(λ·t/r₂) */
  readonly depth: number;
  /** Peak and mean resistance × k where the depth term is 1. */
  readonly peak_PerM: number;
  readonly mean_PerM: number;
}

/**
 * The geometry part of the closed-form spreading resistance, worked once for a source on a plate, so that the part
 * that follows the air flow costs a few multiplications. A source as large as its plate has no constriction.
 */
export function prepareSpreading(
  sourceArea_m2: number,
  plateArea_m2: number,
  thickness_m: number,
): Spreading {
  const sourceRadius_m = Math.sqrt(sourceArea_m2 / Math.PI);
  const plateRadius_m = Math.sqrt(plateArea_m2 / Math.PI);
  const radiusRatio = Math.min(1, sourceRadius_m / plateRadius_m);
  const lambda = Math.PI + 1 / (Math.sqrt(Math.PI) * radiusRatio);
  const free = 1 - radiusRatio;
  return {
    plateRadius_m,
    lambda,
    depth: Math.tanh((lambda * thickness_m) / plateRadius_m),
    peak_PerM: free / (Math.PI * sourceRadius_m),
    mean_PerM: (free * Math.sqrt(free)) / (2 * Math.sqrt(Math.PI) * sourceRadius_m),
  };
}

/** The factor for plate thickness and cooling: φ = (Bi·tanh λτ + λ)/(Bi + λ·tanh λτ), Bi = h·r₂/k. */
export function spreadingDepthFactor(spreading: Spreading, k_WPerMK: number, h_WPerM2K: number): number {
  const biot = (h_WPerM2K * spreading.plateRadius_m) / k_WPerMK;
  return (biot * spreading.depth + spreading.lambda) / (biot + spreading.lambda * spreading.depth);
}

/**
 * Spreading resistance from the mean of the plate to the middle of a small source on it, cooled on the far side at an
 * even coefficient h (on the plate area). Lee's closed form, which turns source and plate into circles of equal area.
 * Against the exact series it is −10 … +23 % within the stated range, mostly on the warm side: long narrow sources
 * come out too hot, long narrow plates too cool.
 */
export function spreadingPeak_KPerW(spreading: Spreading, k_WPerMK: number, h_WPerM2K: number): number {
  return (spreading.peak_PerM / k_WPerMK) * spreadingDepthFactor(spreading, k_WPerMK, h_WPerM2K);
}

/** Range of the closed form: where it was held against the series (sources and plates of every aspect named). */
export const leeRange = {
  radiusRatio: [0.1, 0.5],
  thicknessRatio: [0.1, 1],
  biot: [0.005, 0.5],
  sourceAspect: [1, 2.5],
  plateAspect: [1, 1.3],
} as const;

export type LeeVariable = keyof typeof leeRange | 'plateArea_m2' | 'k_WPerMK';

/** Aluminium 40 × 40 × 3 mm, source 10 × 10 mm, 1000 W/m²K: in the dimensionless numbers of the method. */
export const leeExample: Readonly<Record<LeeVariable, number>> = {
  radiusRatio: 0.25,
  thicknessRatio: 0.1329340388,
  biot: 0.1128379167,
  sourceAspect: 1,
  plateAspect: 1,
  plateArea_m2: 1600e-6,
  k_WPerMK: 200,
};

export const card = defineCard({
  id: 'spreadingPeak',
  title: 'Spreading under a small source, peak (Lee and others 1995)',
  equation:
    'R = (1 − ε)·φ/(π·k·ε·r); φ = (Bi·tanh(λ·τ) + λ)/(Bi + λ·tanh(λ·τ)); λ = π + 1/(√π·ε); r = √(A/π)',
  result: { name: 'spreading resistance to the middle of the source', unit: 'K/W', symbol: 'R' },
  symbols: leeSymbols,
  aside: leeAside,
  source: { key: 'lee1995', where: 'closed form for the maximum' },
  range: leeRange,
  rangeFrom: 'computed',
  scatter: { sigma: 0.08, from: 'computed' },
  assumes: ['peakSpreading', 'centredSource', 'uniformFlux', 'steady'],
  example: {
    given: leeExample,
    printed: '0.33676',
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
    return spreadingPeak_KPerW(spreading, given.k_WPerMK, (given.biot * given.k_WPerMK) / plateRadius_m);
  },
});
