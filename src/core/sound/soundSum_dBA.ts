import { defineCard } from '../card.ts';

/** Several sources together: their energies add, whatever their tones. An empty list is silence, 0 dB here. */
export function soundSum_dBA(levels_dBA: readonly number[]): number {
  const energy = levels_dBA.reduce((sum, level) => sum + 10 ** (level / 10), 0);
  return energy > 0 ? 10 * Math.log10(energy) : 0;
}

export const card = defineCard({
  id: 'soundSum',
  title: 'Sound of several fans together',
  equation: 'L = 10·log₁₀(n·10^(L_1/10) + E); E = Σ 10^(L_i/10); of all others',
  result: { name: 'sound level', unit: 'dB(A)', symbol: 'L' },
  symbols: { count: 'n', level_dBA: 'L_1', othersEnergy: 'E' },
  source: { key: 'cpemmaFanLaws', where: 'adding sound levels' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: null, from: 'not stated' },
  assumes: ['pointSource'],
  example: {
    given: { count: 1, level_dBA: 86, othersEnergy: 1e8 },
    printed: '87',
    kind: 'handbook',
    where: 'the same page: 86 and 80 dB together, the energy of 80 dB being 10⁸',
  },
  evaluate: ({ count, level_dBA, othersEnergy }) =>
    10 * Math.log10(count * 10 ** (level_dBA / 10) + othersEnergy),
});
