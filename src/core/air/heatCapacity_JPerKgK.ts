import { defineCard } from '../card.ts';

/** Specific heat of air at constant pressure, a parabola through handbook values. */
export function heatCapacity_JPerKgK(T_K: number): number {
  const over = T_K - 200;
  return 1002.5 + 275e-6 * over * over;
}

export const card = defineCard({
  id: 'heatCapacity',
  title: 'Specific heat of air',
  equation: 'c_p = 1002.5 + 275·10⁻⁶·(T − 200)²',
  result: { name: 'specific heat', unit: 'J/(kg·K)', symbol: 'c_p' },
  symbols: { T_K: 'T' },
  source: { key: 'airHandbook', where: 'fit to handbook tables of air' },
  range: { T_K: [250, 450] },
  rangeFrom: 'memory',
  scatter: { sigma: 0.002, from: 'memory' },
  assumes: ['dryIdealGas'],
  example: {
    given: { T_K: 300 },
    printed: '1005.2',
    kind: 'worked again',
    where: 'worked by hand; tables of air give 1005 to 1007',
  },
  evaluate: ({ T_K }) => heatCapacity_JPerKgK(T_K),
});
