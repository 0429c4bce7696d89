import { defineCard } from '../card.ts';
import { evaluatePchip, preparePchip } from '../solve/pchip.ts';

const curve = preparePchip([0.3, 0.5, 0.7, 1].map(Math.log), [2, 0.6, 0.2, 0.05].map(Math.log));
const out = new Float64Array(2);

/** Guard of round wires or rounded bars, on the velocity in the whole opening; fades out towards a free opening. */
export function wireGuardLoss(free: number): number {
  if (free >= 1) return 0;
  evaluatePchip(curve, Math.log(free), out);
  return Math.exp(out[0] as number);
}

export const card = defineCard({
  id: 'wireGuardLoss',
  title: 'Guard of round wires',
  equation: 'K = table over the free share, on the whole opening',
  result: { name: 'loss coefficient', unit: '1' },
  source: { key: 'blevins1984', where: 'round_edge_grill of fluids 1.0.22; beyond 0.7 faded out by us' },
  range: { free: [0.3, 0.7] },
  rangeFrom: 'source',
  scatter: { sigma: 0.3, from: 'memory' },
  assumes: ['turbulentLoss'],
  example: { given: { free: 0.5 }, printed: '0.6', where: 'fluids 1.0.22, round_edge_grill' },
  evaluate: ({ free }) => wireGuardLoss(free),
});
