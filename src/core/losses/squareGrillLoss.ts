import { defineCard } from '../card.ts';

/** Grill of square-edged bars, on the velocity in the whole opening. */
export function squareGrillLoss(free: number): number {
  return (0.5 * (1 - free) + (1 - free * free)) / (free * free);
}

export const card = defineCard({
  id: 'squareGrillLoss',
  title: 'Grill of square-edged bars',
  equation: 'K = (0.5·(1 − f) + (1 − f²))/f²; on the whole opening',
  result: { name: 'loss coefficient', unit: '1', symbol: 'K' },
  symbols: { free: 'f' },
  source: { key: 'blevins1984', where: 'square_edge_grill' },
  range: { free: [0.1, 1] },
  rangeFrom: 'source',
  scatter: { sigma: 0.25, from: 'memory' },
  assumes: ['turbulentLoss'],
  example: {
    given: { free: 0.45 },
    printed: '5.2963',
    kind: 'worked again',
    where: 'documentation of fluids 1.0.22',
  },
  evaluate: ({ free }) => squareGrillLoss(free),
});
