import { defineCard } from '../card.ts';

/**
 * Loss where air enters between fins, on the channel velocity. This form goes with APPARENT friction, which already holds
 * the change of the velocity profile; the larger classic core-entrance factor goes with developed friction only.
 * @param sigma open share of the face
 */
export function finEntranceLoss(sigma: number): number {
  return 0.42 * (1 - sigma * sigma);
}

export const card = defineCard({
  id: 'finEntranceLoss',
  title: 'Entrance between fins, with apparent friction',
  equation: 'K = 0.42·(1 − σ²); on the channel velocity',
  result: { name: 'loss coefficient', unit: '1', symbol: 'K' },
  symbols: { sigma: 'σ' },
  source: { key: 'white2016', where: 'sudden contraction' },
  range: { sigma: [0, 1] },
  rangeFrom: 'textbook',
  scatter: { sigma: 0.2, from: 'memory' },
  assumes: ['turbulentLoss', 'uniformInlet'],
  example: {
    given: { sigma: 0.5 },
    printed: '0.315',
    kind: 'worked again',
    where: 'free-streamline theory gives 0.305',
  },
  evaluate: ({ sigma }) => finEntranceLoss(sigma),
});
