import { defineCard } from '../card.ts';

/**
 * Free convection from a warm plate that faces up (or a cold one that faces down), large plates.
 * The length is area over perimeter.
 */
export function nusseltHorizontalUpTurbulent(rayleigh: number): number {
  return 0.15 * Math.cbrt(rayleigh);
}

export const card = defineCard({
  id: 'nusseltHorizontalUpTurbulent',
  title: 'Plate facing up, turbulent',
  equation: 'Nu = 0.15·Ra^(1/3)',
  result: { name: 'Nusselt number on area over perimeter', unit: '1', symbol: 'Nu' },
  symbols: { rayleigh: 'Ra' },
  source: { key: 'incropera', where: 'eq. 9.31' },
  range: { rayleigh: [1e7, 1e11] },
  rangeFrom: 'textbook',
  scatter: { sigma: 0.15, from: 'memory' },
  assumes: ['isothermalPlate', 'stillRoom'],
  example: {
    given: { rayleigh: 1.38e8 },
    printed: '77.5',
    kind: 'worked again',
    where: 'ex. 9.3 (top of the duct), worked by hand',
  },
  evaluate: ({ rayleigh }) => nusseltHorizontalUpTurbulent(rayleigh),
});
