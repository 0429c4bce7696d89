import { defineCard } from '../card.ts';
import { evaluatePchip, preparePchip } from '../solve/pchip.ts';
import { suddenContraction } from './suddenContraction.ts';

const angles_rad = [0, 10, 30, 60, 90, 180].map((degrees) => (degrees * Math.PI) / 180);
const curve = preparePchip(angles_rad, [0, 0.031, 0.041, 0.091, 0.155, 0.386]);
const out = new Float64Array(2);
/** A sudden narrowing of the table's area ratio. */
const tableLoss = suddenContraction((0.04 / 0.06) ** 2);

/**
 * Neck-down between sloping walls, on the velocity in the narrow end. Tabulated over the full angle for one area ratio
 * and scaled to others as a sudden narrowing is. @param ratio narrow over wide area
 */
export function neckDownLoss(angle_rad: number, ratio: number): number {
  evaluatePchip(curve, Math.min(Math.PI, Math.max(0, angle_rad)), out);
  return ((out[0] as number) * suddenContraction(ratio)) / tableLoss;
}

export const card = defineCard({
  id: 'neckDownLoss',
  title: 'Neck-down between sloping walls',
  equation: 'K = K_θ·(1 − σ)^(3/4)/(1 − 4/9)^(3/4); K_θ = table(θ); on the narrow end',
  result: { name: 'loss coefficient', unit: '1', symbol: 'K' },
  symbols: { angle_rad: 'θ', ratio: 'σ' },
  source: { key: 'rennels2012', where: 'contraction_conical of fluids 1.0.22 at σ = 4/9' },
  range: { angle_rad: [0, 3.1416], ratio: [0.1, 1] },
  rangeFrom: 'source',
  scatter: { sigma: 0.2, from: 'memory' },
  assumes: ['turbulentLoss'],
  example: {
    given: { angle_rad: Math.PI / 3, ratio: (0.04 / 0.06) ** 2 },
    printed: '0.091',
    kind: 'worked again',
    where: 'fluids 1.0.22, 60°',
  },
  evaluate: ({ angle_rad, ratio }) => neckDownLoss(angle_rad, ratio),
});
