import { defineCard } from '../card.ts';
import { evaluatePchip, preparePchip } from '../solve/pchip.ts';
import { suddenExpansion } from './suddenExpansion.ts';

const angles_rad = [0, 10, 20, 30, 45, 60, 90, 120, 180].map((degrees) => (degrees * Math.PI) / 180);
const curve = preparePchip(angles_rad, [0, 0.059, 0.134, 0.253, 0.345, 0.373, 0.341, 0.328, 0.31]);
const out = new Float64Array(2);
/** A sudden widening of the table's area ratio. */
const tableLoss = suddenExpansion((0.04 / 0.06) ** 2);

/**
 * Widening between sloping walls, on the velocity in the narrow end; tabulated for one area ratio and scaled to others
 * as a sudden widening is. @param ratio narrow over wide area
 */
export function diffuserLoss(angle_rad: number, ratio: number): number {
  evaluatePchip(curve, Math.min(Math.PI, Math.max(0, angle_rad)), out);
  return ((out[0] as number) * suddenExpansion(ratio)) / tableLoss;
}

export const card = defineCard({
  id: 'diffuserLoss',
  title: 'Widening between sloping walls',
  equation: 'K = K_θ·(1 − σ)²/(1 − 4/9)²; K_θ = table(θ); on the narrow end',
  result: { name: 'loss coefficient', unit: '1', symbol: 'K' },
  symbols: { angle_rad: 'θ', ratio: 'σ' },
  source: { key: 'rennels2012', where: 'diffuser of fluids 1.0.22 at σ = 4/9' },
  range: { angle_rad: [0, 3.1416], ratio: [0.1, 1] },
  rangeFrom: 'source',
  scatter: { sigma: 0.25, from: 'memory' },
  assumes: ['turbulentLoss'],
  example: {
    given: { angle_rad: Math.PI / 9, ratio: (0.04 / 0.06) ** 2 },
    printed: '0.134',
    kind: 'worked again',
    where: 'fluids 1.0.22, 20°',
  },
  evaluate: ({ angle_rad, ratio }) => diffuserLoss(angle_rad, ratio),
});
