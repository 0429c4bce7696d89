import { defineCard } from '../card.ts';

/** Two ways side by side between the same two temperatures. The share of the first is this result over its own. */
export function parallelResistance_KPerW(first_KPerW: number, second_KPerW: number): number {
  return (first_KPerW * second_KPerW) / (first_KPerW + second_KPerW);
}

export const card = defineCard({
  id: 'parallelResistance',
  title: 'Two heat paths side by side',
  equation: 'R = R_1·R_2/(R_1 + R_2)',
  result: { name: 'thermal resistance', unit: 'K/W', symbol: 'R' },
  symbols: { first_KPerW: 'R_1', second_KPerW: 'R_2' },
  source: { key: 'incropera', where: 'ch. 3, parallel thermal circuit' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: null, from: 'not stated' },
  assumes: ['steady'],
  example: {
    given: { first_KPerW: 11.61, second_KPerW: 19.5 },
    printed: '7.2772',
    kind: 'worked again',
    where: 'both faces of one resistor, worked by hand',
  },
  evaluate: ({ first_KPerW, second_KPerW }) => parallelResistance_KPerW(first_KPerW, second_KPerW),
});
