import { defineCard } from '../card.ts';

/** Sudden widening (Borda–Carnot), on the velocity in the smaller area. @param ratio small over large area */
export function suddenExpansion(ratio: number): number {
  return (1 - ratio) * (1 - ratio);
}

export const card = defineCard({
  id: 'suddenExpansion',
  title: 'Sudden widening',
  equation: 'K = (1 − σ)²; on the smaller area',
  result: { name: 'loss coefficient', unit: '1', symbol: 'K' },
  symbols: { ratio: 'σ' },
  source: { key: 'bordaCarnot', where: 'momentum balance' },
  range: { ratio: [0, 1] },
  rangeFrom: 'textbook',
  scatter: { sigma: 0.1, from: 'memory' },
  assumes: ['turbulentLoss'],
  example: {
    given: { ratio: 0.3 },
    printed: '0.49',
    kind: 'worked again',
    where: 'fluids 1.0.22, diffuser_sharp',
  },
  evaluate: ({ ratio }) => suddenExpansion(ratio),
});
