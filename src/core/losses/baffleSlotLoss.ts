import { defineCard } from '../card.ts';

/**
 * Air leaves the plenum upward through a slot and meets the fins close above: turn and jet together, on the velocity in
 * the slot. Between 1.6 where the jet can spread and 2.45 where it cannot; grows with slot over passage width.
 */
export function baffleSlotLoss(): number {
  return 2.2;
}

export const card = defineCard({
  id: 'baffleSlotLoss',
  title: 'Baffle slot with a turn, fins close above',
  equation: 'K = 2.2; on the slot velocity',
  result: { name: 'loss coefficient', unit: '1', symbol: 'K' },
  symbols: {},
  source: {
    key: 'ownComputation',
    where: 'two-dimensional flow solutions, 2.0 to 2.45 with fins close above',
  },
  range: {},
  rangeFrom: 'computed',
  scatter: { sigma: 0.2, from: 'computed' },
  assumes: ['turbulentLoss', 'evenFeed'],
  example: { given: {}, printed: '2.2', kind: 'computed elsewhere', where: 'middle of the computed band' },
  evaluate: () => baffleSlotLoss(),
});
