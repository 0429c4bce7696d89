import { defineCard } from '../card.ts';
import {
  SERIES_WAVES,
  type SpreadingCase,
  seriesExample,
  spreadingSeries_KPerW,
} from './spreadingSeries_KPerW.ts';

/** Exact spreading resistance to the mean of a rectangular source: the reference for the closed form of the mean. */
export function spreadingSeriesMean_KPerW(given: SpreadingCase, waves = SERIES_WAVES): number {
  return spreadingSeries_KPerW(given, 'mean', waves);
}

export const card = defineCard({
  id: 'spreadingSeriesMean',
  title: 'Spreading under a rectangular source, mean, Fourier series',
  equation:
    'R = (2·Σ S_m²·φ(λ)/λ + 2·Σ S_n²·φ(δ)/δ + 4·Σ S_m²·S_n²·φ(β)/β)/(c·d·k); φ(z) = (z + (h/k)·tanh(z·t))/(z·tanh(z·t) + h/k); λ = 2·m·π/c; δ = 2·n·π/d; β = √(λ² + δ²); S_m = sin(λ·a/2)/(λ·a/2); S_n = sin(δ·b/2)/(δ·b/2)',
  result: { name: 'spreading resistance to the mean of the source', unit: 'K/W', symbol: 'R' },
  symbols: {
    sourceLength_m: 'a',
    sourceWidth_m: 'b',
    plateLength_m: 'c',
    plateWidth_m: 'd',
    thickness_m: 't',
    k_WPerMK: 'k',
    h_WPerM2K: 'h',
  },
  source: { key: 'muzychkaSpreading', where: 'rectangular flux channel' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: 0.002, from: 'computed' },
  assumes: ['centredSource', 'uniformFlux', 'steady'],
  example: {
    given: seriesExample,
    printed: '0.27256',
    kind: 'computed elsewhere',
    where: 'aluminium 40 × 40 × 3 mm, source 10 × 10 mm; separate program, and finite volumes within 0.15 %',
  },
  evaluate: (given) => spreadingSeriesMean_KPerW(given),
});
