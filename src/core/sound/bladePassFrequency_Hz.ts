import { defineCard } from '../card.ts';

/** Tone of a fan: how often a blade passes a strut of its frame. */
export function bladePassFrequency_Hz(blades: number, rotation_PerS: number): number {
  return blades * rotation_PerS;
}

export const card = defineCard({
  id: 'bladePass',
  title: 'Tone of the passing blades',
  equation: 'f = z·n',
  result: { name: 'frequency', unit: 'Hz', symbol: 'f' },
  symbols: { blades: 'z', rotation_PerS: 'n' },
  source: { key: 'commonPractice', where: 'definition' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: 0.05, from: 'common practice' },
  assumes: ['speedFollowsVoltage'],
  example: {
    given: { blades: 7, rotation_PerS: 50 },
    printed: '350',
    kind: 'worked again',
    where: 'worked by hand: 3000 rpm',
  },
  evaluate: ({ blades, rotation_PerS }) => bladePassFrequency_Hz(blades, rotation_PerS),
});
