import { defineCard } from '../card.ts';

/** Time constant of one body behind one resistance: the time to 63 % of its final rise. */
export function timeConstant_s(R_KPerW: number, C_JPerK: number): number {
  return R_KPerW * C_JPerK;
}

export const card = defineCard({
  id: 'timeConstant',
  title: 'Time constant of one body',
  equation: 'τ = R·C',
  result: { name: 'time constant', unit: 's', symbol: 'τ' },
  symbols: { R_KPerW: 'R', C_JPerK: 'C' },
  source: { key: 'lienhard', where: 'ch. 1, lumped capacity' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: null, from: 'not stated' },
  assumes: ['lumped', 'steadyProperties'],
  example: {
    given: { R_KPerW: 1 / (18.44 * 1.33e-4), C_JPerK: 2000 * 700 * (Math.PI / 4) * 3.6e-3 * 3.6e-3 * 10e-3 },
    printed: '58.1',
    kind: 'worked example',
    where: 'ex. 2.9, where three of them are 174.3 s',
  },
  evaluate: ({ R_KPerW, C_JPerK }) => timeConstant_s(R_KPerW, C_JPerK),
});
