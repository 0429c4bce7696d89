import { defineCard } from '../card.ts';

/** Free spreading from a point: 6 dB less for each doubling of the distance. Rooms reflect, so indoors it falls less. */
export function soundAtDistance_dBA(level_dBA: number, from_m: number, to_m: number): number {
  return level_dBA - 20 * Math.log10(to_m / from_m);
}

export const card = defineCard({
  id: 'soundAtDistance',
  title: 'Sound over distance',
  equation: 'L_2 = L_1 − 20·log₁₀(r_2/r_1)',
  result: { name: 'sound level', unit: 'dB(A)', symbol: 'L_2' },
  symbols: { level_dBA: 'L_1', from_m: 'r_1', to_m: 'r_2' },
  source: { key: 'commonPractice', where: 'free spreading from a point' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: null, from: 'not stated' },
  assumes: ['pointSource'],
  example: {
    given: { level_dBA: 40, from_m: 1, to_m: 10 },
    printed: '20',
    kind: 'worked again',
    where: 'worked by hand: ten times the distance, a hundredth of the intensity',
  },
  evaluate: ({ level_dBA, from_m, to_m }) => soundAtDistance_dBA(level_dBA, from_m, to_m),
});
