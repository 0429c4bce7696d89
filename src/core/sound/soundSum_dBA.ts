import { defineCard } from '../card.ts';

/** Several sources together: their energies add, whatever their tones. An empty list is silence, 0 dB here. */
export function soundSum_dBA(levels_dBA: readonly number[]): number {
  const energy = levels_dBA.reduce((sum, level) => sum + 10 ** (level / 10), 0);
  return energy > 0 ? 10 * Math.log10(energy) : 0;
}

export const card = defineCard({
  id: 'soundSum',
  title: 'Sound of several fans together',
  equation: 'L = 10·log₁₀ Σ 10^(L_i/10)',
  result: { name: 'sound level', unit: 'dB' },
  source: { key: 'cpemmaFanLaws', where: 'adding sound levels' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: null, from: 'not stated' },
  assumes: ['pointSource'],
  example: {
    given: { first_dBA: 86, second_dBA: 80 },
    printed: '87',
    kind: 'handbook',
    where: 'the same page: 86 and 80 dB together',
  },
  evaluate: ({ first_dBA, second_dBA }) => soundSum_dBA([first_dBA, second_dBA]),
});
