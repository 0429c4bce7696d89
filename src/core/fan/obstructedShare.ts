import { defineCard } from '../card.ts';

/**
 * Share of its flow that a fan may lose to a wall close before or behind it: nothing from one diameter on, about three
 * tenths where there is no room at all. Told as a warning, never counted: nobody knows it well.
 */
export function obstructedShare(space_m: number, diameter_m: number): number {
  return 0.3 * Math.max(0, 1 - space_m / diameter_m);
}

export const card = defineCard({
  id: 'obstructedFan',
  title: 'A wall close to a fan',
  equation: 'φ = 0.3·max(0, 1 − s/D)',
  result: { name: 'share of the flow', unit: '1', symbol: 'φ' },
  symbols: { space_m: 's', diameter_m: 'D' },
  source: {
    key: 'commonPractice',
    where: '10 to 30 % within one diameter, from memory; told as a warning, not counted',
  },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: 0.5, from: 'memory' },
  assumes: ['fanLaws'],
  example: {
    given: { space_m: 0.02, diameter_m: 0.06 },
    printed: '0.20',
    kind: 'worked again',
    where: 'worked by hand',
  },
  evaluate: ({ space_m, diameter_m }) => obstructedShare(space_m, diameter_m),
});
