import { defineCard } from '../card.ts';

/**
 * Discharge coefficient of a crack: sharp when shorter than wide, with the jet closing again inside when longer than two
 * widths; a straight line between. @param lengthOverGap wall thickness over width of the crack
 */
export function slotDischarge(lengthOverGap: number): number {
  return 0.61 + 0.19 * Math.min(1, Math.max(0, lengthOverGap - 1));
}

export const card = defineCard({
  id: 'slotDischarge',
  title: 'Leak through a crack',
  equation: 'C_d = 0.61 + 0.19·min(1, max(0, λ − 1)); λ is length over width of the crack',
  result: { name: 'discharge coefficient', unit: '1', symbol: 'C_d' },
  symbols: { lengthOverGap: 'λ' },
  source: { key: 'commonPractice', where: 'sharp and short-tube orifices' },
  range: { lengthOverGap: [0, 10] },
  rangeFrom: 'common practice',
  scatter: { sigma: 0.1, from: 'common practice' },
  assumes: ['turbulentLoss'],
  example: {
    given: { lengthOverGap: 0.5 },
    printed: '0.61',
    kind: 'from memory',
    where: 'sharp orifice, from memory',
  },
  evaluate: ({ lengthOverGap }) => slotDischarge(lengthOverGap),
});
