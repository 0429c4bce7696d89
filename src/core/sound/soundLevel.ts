import { defineCard } from '../card.ts';

/** Sound level of a fan at another speed. @param speedRatio new over old */
export function soundAtSpeed_dBA(level_dBA: number, speedRatio: number): number {
  return level_dBA + 50 * Math.log10(speedRatio);
}

/** Several sources together: their energies add. An empty list is silence, 0 dB here. */
export function soundSum_dBA(levels_dBA: readonly number[]): number {
  const energy = levels_dBA.reduce((sum, level) => sum + 10 ** (level / 10), 0);
  return energy > 1 ? 10 * Math.log10(energy) : 0;
}

/** Free spreading from a point: 6 dB less for each doubling of the distance. */
export function soundAtDistance_dBA(level_dBA: number, from_m: number, to_m: number): number {
  return level_dBA - 20 * Math.log10(to_m / from_m);
}

export const card = defineCard({
  id: 'soundAtSpeed',
  title: 'Sound of a fan over speed',
  equation: 'L₂ = L₁ + 50·log₁₀(n₂/n₁)',
  result: { name: 'sound level', unit: 'dB' },
  source: { key: 'cpemmaFanLaws', where: 'speed law of fan noise' },
  range: { speedRatio: [0.4, 1.5] },
  rangeFrom: 'common practice',
  scatter: { sigma: 0.1, from: 'common practice' },
  assumes: ['pointSource'],
  example: {
    given: { level_dBA: 0, speedRatio: 7 / 12 },
    printed: '-11.70',
    where: 'the same page: 12 V to 7 V',
  },
  evaluate: ({ level_dBA, speedRatio }) => soundAtSpeed_dBA(level_dBA, speedRatio),
});
