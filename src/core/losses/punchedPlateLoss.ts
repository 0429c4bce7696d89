import { defineCard } from '../card.ts';

/** Thin sharp-edged perforated sheet, on the velocity in the whole opening. @param free open share of the sheet */
export function punchedPlateLoss(free: number): number {
  const blocked = 1 - free;
  const eighth = Math.sqrt(Math.sqrt(Math.sqrt(blocked)));
  const root = blocked + 0.707 * eighth * eighth * eighth;
  return (root * root) / (free * free);
}

export const card = defineCard({
  id: 'punchedPlateLoss',
  title: 'Perforated sheet, thin and sharp',
  equation: 'K = ((1 − f) + 0.707·(1 − f)^0.375)²/f²; on the whole opening',
  result: { name: 'loss coefficient', unit: '1', symbol: 'K' },
  symbols: { free: 'f' },
  source: { key: 'idelchik', where: 'diagram 4-14, as in the Modelica Standard Library' },
  range: { free: [0.05, 1] },
  rangeFrom: 'source',
  scatter: { sigma: 0.25, from: 'memory' },
  assumes: ['turbulentLoss'],
  example: { given: { free: 0.5 }, printed: '4.3695', kind: 'worked again', where: 'formula, recomputed' },
  evaluate: ({ free }) => punchedPlateLoss(free),
});
