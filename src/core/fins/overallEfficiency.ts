import { defineCard } from '../card.ts';

/**
 * Efficiency of a whole finned surface, bare stretches between the fins included: the share of its area that would give the
 * same heat at plate temperature everywhere. One heat transfer coefficient for fins and bare stretches.
 */
export function overallEfficiency(finArea_m2: number, totalArea_m2: number, finEfficiency: number): number {
  return 1 - (finArea_m2 / totalArea_m2) * (1 - finEfficiency);
}

export const card = defineCard({
  id: 'overallEfficiency',
  title: 'Whole finned surface',
  equation: 'η_o = 1 − (A_f/A)·(1 − η)',
  result: { name: 'overall surface efficiency', unit: '1', symbol: 'η_o' },
  symbols: { finArea_m2: 'A_f', totalArea_m2: 'A', finEfficiency: 'η' },
  source: { key: 'incropera', where: 'ch. 3, overall surface efficiency' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: 0.01, from: 'common practice' },
  assumes: ['uniformWallTemperature', 'oneDimensionalFin'],
  example: {
    given: { finArea_m2: 0.018, totalArea_m2: 0.02, finEfficiency: 0.9 },
    printed: '0.91',
    kind: 'worked again',
    where: 'worked by hand: nine tenths of the area at nine tenths',
  },
  evaluate: ({ finArea_m2, totalArea_m2, finEfficiency }) =>
    overallEfficiency(finArea_m2, totalArea_m2, finEfficiency),
});
