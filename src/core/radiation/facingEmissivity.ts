import { defineCard } from '../card.ts';

/** Two large grey surfaces that face one another closely, as one emissivity. */
export function facingEmissivity(first: number, second: number): number {
  return 1 / (1 / first + 1 / second - 1);
}

export const card = defineCard({
  id: 'facingEmissivity',
  title: 'Radiation between two facing surfaces',
  equation: 'ε = 1/(1/ε_1 + 1/ε_2 − 1)',
  result: { name: 'emissivity of the pair', unit: '1', symbol: 'ε' },
  symbols: { first: 'ε_1', second: 'ε_2' },
  source: { key: 'incropera', where: 'ch. 13, large parallel planes' },
  range: { first: [0.01, 1], second: [0.01, 1] },
  rangeFrom: 'textbook',
  scatter: { sigma: null, from: 'not stated' },
  assumes: ['greyDiffuse', 'isothermalPlate'],
  example: {
    given: { first: 0.5, second: 0.5 },
    printed: '0.33333',
    kind: 'worked again',
    where: 'worked by hand: 1/(2 + 2 − 1)',
  },
  evaluate: ({ first, second }) => facingEmissivity(first, second),
});
