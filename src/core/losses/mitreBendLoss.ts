import { defineCard } from '../card.ts';

/** Sharp right-angled turn of a duct, on its velocity. */
export function mitreBendLoss(): number {
  return 1.2;
}

export const card = defineCard({
  id: 'mitreBendLoss',
  title: 'Sharp right-angled turn',
  equation: 'K = 1.2; on the duct velocity',
  result: { name: 'loss coefficient', unit: '1', symbol: 'K' },
  symbols: {},
  source: { key: 'rennels2012', where: '90° mitre; Miller gives 1.18' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: 0.15, from: 'memory' },
  assumes: ['turbulentLoss'],
  example: {
    given: {},
    printed: '1.2',
    kind: 'computed elsewhere',
    where: 'fluids 1.0.22 (Rennels): 1.2021',
  },
  evaluate: () => mitreBendLoss(),
});
