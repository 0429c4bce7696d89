import { defineCard } from '../card.ts';

/** Fanning friction factor of turbulent flow in a smooth duct, explicit (Haaland). */
export function frictionTurbulent(reynolds: number): number {
  const root = 3.6 * Math.log10(reynolds / 6.9);
  return 1 / (root * root);
}

export const card = defineCard({
  id: 'frictionTurbulent',
  title: 'Friction in a smooth duct, turbulent',
  equation: 'f = 1/(3.6·log₁₀(Re/6.9))²',
  result: { name: 'friction factor, Fanning', unit: '1', symbol: 'f' },
  symbols: { reynolds: 'Re' },
  source: { key: 'haaland1983', where: 'smooth limit' },
  range: { reynolds: [4000, 1e8] },
  rangeFrom: 'textbook',
  scatter: { sigma: 0.03, from: 'memory' },
  assumes: ['smoothWall'],
  example: {
    given: { reynolds: 1e4 },
    printed: '0.007722',
    kind: 'worked again',
    where: 'fluids 1.0.22: Darcy 0.030886',
  },
  evaluate: ({ reynolds }) => frictionTurbulent(reynolds),
});
