import { defineCard } from '../card.ts';

/** Velocity heads lost where a stream ends in a large space: its own, all of it. On the stream's velocity. */
export function exitLoss(): number {
  return 1;
}

export const card = defineCard({
  id: 'exitLoss',
  title: 'A stream ends in the open',
  equation: 'K = 1; on the velocity of the stream',
  result: { name: 'loss coefficient', unit: '1', symbol: 'K' },
  symbols: {},
  source: { key: 'bordaCarnot', where: 'sudden expansion into a large space' },
  range: {},
  rangeFrom: 'textbook',
  scatter: { sigma: 0.05, from: 'memory' },
  assumes: ['nothingWonBack', 'ownDynamicHead'],
  example: { given: {}, printed: '1', kind: 'worked again', where: '(1 − σ)² with σ = 0' },
  evaluate: () => exitLoss(),
});
