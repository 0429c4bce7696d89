import { defineCard } from '../card.ts';
import { evaluatePchip, preparePchip } from '../solve/pchip.ts';

/** K·f² over f, falling to nothing where nothing is in the way. */
const curve = preparePchip([0.3, 0.4, 0.5, 0.6, 0.7, 1], [0.18, 0.16, 0.15, 0.144, 0.098, 0]);
const out = new Float64Array(2);

/**
 * Guard of round wires or rounded bars, on the velocity in the whole opening. Fades out towards a free opening; below the
 * table the jet loss at its end is kept, K falling as 1/f².
 */
export function wireGuardLoss(free: number): number {
  if (free <= 0.3) return 0.18 / (free * free);
  if (free >= 1) return 0;
  evaluatePchip(curve, free, out);
  return (out[0] as number) / (free * free);
}

export const card = defineCard({
  id: 'wireGuardLoss',
  title: 'Guard of round wires',
  equation:
    'K = W/f²; W = table(f); 0.18 at f 0.3, 0.16 at 0.4, 0.15 at 0.5, 0.144 at 0.6, 0.098 at 0.7; on the whole opening',
  result: { name: 'loss coefficient', unit: '1', symbol: 'K' },
  symbols: { free: 'f' },
  source: { key: 'blevins1984', where: 'round_edge_grill of fluids 1.0.22; beyond 0.7 faded out by us' },
  range: { free: [0.3, 0.7] },
  rangeFrom: 'source',
  scatter: { sigma: 0.3, from: 'memory' },
  assumes: ['turbulentLoss'],
  example: {
    given: { free: 0.5 },
    printed: '0.6',
    kind: 'worked again',
    where: 'fluids 1.0.22, round_edge_grill',
  },
  evaluate: ({ free }) => wireGuardLoss(free),
});
