import { defineCard } from '../card.ts';

/**
 * Exit from channels into a duct as wide as the whole face, pressure won back by mixing, on the channel velocity.
 * Negative where the profile's momentum is worth more than its pressure loss. Not for a bank that opens into a room.
 * @param momentum profile factor K_d
 */
export function channelExitDucted(sigma: number, momentum: number): number {
  return 1 - 2 * momentum * sigma + sigma * sigma;
}

export const card = defineCard({
  id: 'channelExitDucted',
  title: 'Exit from channels into a duct',
  equation: 'K = 1 − 2·K_d·σ + σ²; on the channel velocity',
  result: { name: 'loss coefficient', unit: '1', symbol: 'K' },
  symbols: { sigma: 'σ', momentum: 'K_d' },
  source: { key: 'kaysLondon', where: 'momentum balance behind a core' },
  range: { sigma: [0, 1], momentum: [1, 1.4] },
  rangeFrom: 'textbook',
  scatter: { sigma: 0.1, from: 'memory' },
  assumes: ['uniformInlet'],
  example: {
    given: { sigma: 0.4, momentum: 1.2 },
    printed: '0.200',
    kind: 'worked again',
    where: 'derivation, recomputed',
  },
  evaluate: ({ sigma, momentum }) => channelExitDucted(sigma, momentum),
});
