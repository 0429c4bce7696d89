import { defineCard } from '../card.ts';

/** Relative change of a resistance by a temperature rise, from linear and square coefficient. */
export function resistanceDrift(dT_K: number, linear_perK: number, square_perK2: number): number {
  return dT_K * (linear_perK + square_perK2 * dT_K);
}

export const card = defineCard({
  id: 'resistanceDrift',
  title: 'Drift of a resistance with temperature',
  equation: 'ΔR/R = α·ΔT + β·ΔT²',
  result: { name: 'relative change', unit: '1', symbol: 'ΔR/R' },
  symbols: { dT_K: 'ΔT', linear_perK: 'α', square_perK2: 'β' },
  source: { key: 'chipConvention', where: 'definition of the temperature coefficient' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: null, from: 'not stated' },
  assumes: ['evenFilmHeat'],
  example: {
    given: { dT_K: 40, linear_perK: 25e-6, square_perK2: 0 },
    printed: '0.001',
    kind: 'worked again',
    where: 'worked by hand',
  },
  evaluate: ({ dT_K, linear_perK, square_perK2 }) => resistanceDrift(dT_K, linear_perK, square_perK2),
});
