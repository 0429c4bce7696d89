import { defineCard } from '../card.ts';
import {
  SERIES_WAVES,
  type SpreadingCase,
  seriesExample,
  spreadingSeries_KPerW,
} from './spreadingSeries_KPerW.ts';

/** Exact spreading resistance to the middle of a rectangular source: the reference for the closed form of the peak. */
export function spreadingSeriesPeak_KPerW(given: SpreadingCase, waves = SERIES_WAVES): number {
  return spreadingSeries_KPerW(given, 'peak', waves);
}

export const card = defineCard({
  id: 'spreadingSeriesPeak',
  title: 'Spreading under a rectangular source, peak, Fourier series',
  equation: 'R = (2/cdk)·[Σ S·φ/λ + Σ S·φ/δ] + (4/cdk)·ΣΣ S·S·φ/β, S(u) = sin u / u',
  result: { name: 'spreading resistance to the middle of the source', unit: 'K/W' },
  source: { key: 'muzychkaSpreading', where: 'rectangular flux channel, evaluated at the middle' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: 0.002, from: 'computed' },
  assumes: ['centredSource', 'uniformFlux', 'steady'],
  example: {
    given: seriesExample,
    printed: '0.34085',
    kind: 'computed elsewhere',
    where: 'aluminium 40 × 40 × 3 mm, source 10 × 10 mm; separate program, and finite volumes within 0.15 %',
  },
  evaluate: (given) => spreadingSeriesPeak_KPerW(given),
});
