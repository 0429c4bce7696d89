import { defineCard } from '../card.ts';

/** Sound level of a fan at another speed. Small fans follow it within a few decibels over their range of voltage. */
export function soundAtSpeed_dBA(level_dBA: number, speedRatio: number): number {
  return level_dBA + 50 * Math.log10(speedRatio);
}

export const card = defineCard({
  id: 'soundAtSpeed',
  title: 'Sound of a fan over speed',
  equation: 'L_2 = L_1 + 50·log₁₀(n); n is speed over rated speed',
  result: { name: 'sound level', unit: 'dB(A)', symbol: 'L_2' },
  symbols: { level_dBA: 'L_1', speedRatio: 'n' },
  source: { key: 'cpemmaFanLaws', where: 'speed law of fan noise' },
  range: { speedRatio: [0.4, 1.5] },
  rangeFrom: 'common practice',
  scatter: { sigma: 0.1, from: 'common practice' },
  assumes: ['fanLaws'],
  example: {
    given: { level_dBA: 0, speedRatio: 7 / 12 },
    printed: '-11.70',
    kind: 'handbook',
    where: 'the same page: 12 V to 7 V',
  },
  evaluate: ({ level_dBA, speedRatio }) => soundAtSpeed_dBA(level_dBA, speedRatio),
});
