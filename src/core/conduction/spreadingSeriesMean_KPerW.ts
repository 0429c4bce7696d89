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
  equation: 'R = (2/cdk)·[Σ S²·φ/λ + Σ S²·φ/δ] + (4/cdk)·ΣΣ S²·S²·φ/β, S(u) = sin u / u',
  result: { name: 'spreading resistance to the mean of the source', unit: 'K/W' },
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
