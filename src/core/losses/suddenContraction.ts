import { defineCard } from '../card.ts';

/** Sudden narrowing, on the velocity in the smaller area. @param ratio small over large area */
export function suddenContraction(ratio: number): number {
  const root = Math.sqrt(1 - ratio);
  return 0.5 * root * Math.sqrt(root);
}

export const card = defineCard({
  id: 'suddenContraction',
  title: 'Sudden narrowing',
  equation: 'K = 0.5·(1 − σ)^(3/4); on the smaller area',
  result: { name: 'loss coefficient', unit: '1', symbol: 'K' },
  symbols: { ratio: 'σ' },
  source: { key: 'idelchik', where: 'sharp-edged contraction' },
  range: { ratio: [0, 1] },
  rangeFrom: 'memory',
  scatter: { sigma: 0.2, from: 'memory' },
  assumes: ['turbulentLoss'],
  example: {
    given: { ratio: 0.5 },
    printed: '0.297',
    kind: 'worked again',
    where: 'worked by hand; fluids 1.0.22 (Rennels) gives 0.343',
  },
  evaluate: ({ ratio }) => suddenContraction(ratio),
});
