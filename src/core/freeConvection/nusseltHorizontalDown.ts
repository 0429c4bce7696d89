import { defineCard } from '../card.ts';

/**
 * Free convection from a warm plate that faces down (or a cold one that faces up): the air has to creep out at the edges.
 * The length is area over perimeter.
 */
export function nusseltHorizontalDown(rayleigh: number): number {
  return 0.27 * Math.sqrt(Math.sqrt(rayleigh));
}

export const card = defineCard({
  id: 'nusseltHorizontalDown',
  title: 'Plate facing down',
  equation: 'Nu = 0.27·Ra^(1/4)',
  result: { name: 'Nusselt number on area over perimeter', unit: '1', symbol: 'Nu' },
  symbols: { rayleigh: 'Ra' },
  source: { key: 'incropera', where: 'eq. 9.32' },
  range: { rayleigh: [1e5, 1e10] },
  rangeFrom: 'textbook',
  scatter: { sigma: 0.15, from: 'memory' },
  assumes: ['isothermalPlate', 'stillRoom'],
  example: {
    given: { rayleigh: 1.38e8 },
    printed: '29.3',
    kind: 'worked again',
    where: 'ex. 9.3 (bottom of the duct), worked by hand',
  },
  evaluate: ({ rayleigh }) => nusseltHorizontalDown(rayleigh),
});
