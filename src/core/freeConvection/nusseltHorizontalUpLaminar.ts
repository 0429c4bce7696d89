import { defineCard } from '../card.ts';

/**
 * Free convection from a warm plate that faces up (or a cold one that faces down), small plates.
 * The length is area over perimeter.
 */
export function nusseltHorizontalUpLaminar(rayleigh: number): number {
  return 0.54 * Math.sqrt(Math.sqrt(rayleigh));
}

export const card = defineCard({
  id: 'nusseltHorizontalUpLaminar',
  title: 'Plate facing up, laminar',
  equation: 'Nu = 0.54·Ra^(1/4)',
  result: { name: 'Nusselt number on area over perimeter', unit: '1', symbol: 'Nu' },
  symbols: { rayleigh: 'Ra' },
  source: { key: 'cengel', where: 'table 9-1' },
  range: { rayleigh: [1e4, 1e7] },
  rangeFrom: 'textbook',
  scatter: { sigma: 0.15, from: 'memory' },
  assumes: ['isothermalPlate', 'stillRoom'],
  example: {
    given: { rayleigh: 1.1952e7 },
    printed: '31.75',
    kind: 'worked example',
    where: 'ex. 9-2, which uses it slightly beyond its range',
  },
  evaluate: ({ rayleigh }) => nusseltHorizontalUpLaminar(rayleigh),
});
