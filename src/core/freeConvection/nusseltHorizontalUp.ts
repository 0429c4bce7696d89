import { defineCard } from '../card.ts';
import { nusseltHorizontalUpLaminar } from './nusseltHorizontalUpLaminar.ts';
import { nusseltHorizontalUpTurbulent } from './nusseltHorizontalUpTurbulent.ts';

/**
 * Free convection from a warm plate that faces up, any size: the larger of the laminar and the turbulent line.
 * The textbooks change over at 1e7 with a jump of 6 %; the lines cross at 4.7e6, where this has none.
 */
export function nusseltHorizontalUp(rayleigh: number): number {
  return Math.max(nusseltHorizontalUpLaminar(rayleigh), nusseltHorizontalUpTurbulent(rayleigh));
}

export const card = defineCard({
  id: 'nusseltHorizontalUp',
  title: 'Plate facing up, laminar or turbulent',
  equation: 'Nu = max(0.54·Ra^(1/4), 0.15·Ra^(1/3))',
  result: { name: 'Nusselt number on area over perimeter', unit: '1', symbol: 'Nu' },
  symbols: { rayleigh: 'Ra' },
  source: { key: 'incropera', where: 'eq. 9.30 and 9.31' },
  range: { rayleigh: [1e4, 1e11] },
  rangeFrom: 'textbook',
  scatter: { sigma: 0.15, from: 'memory' },
  assumes: ['isothermalPlate', 'stillRoom'],
  example: {
    given: { rayleigh: 1e4 },
    printed: '5.4',
    kind: 'worked again',
    where: 'worked by hand',
  },
  evaluate: ({ rayleigh }) => nusseltHorizontalUp(rayleigh),
});
