import { defineCard } from '../card.ts';
import { churchillPrandtl } from './churchillPrandtl.ts';

/** Free convection from a vertical plate while the flow is laminar: plates up to a few hundred millimetres. */
export function nusseltVerticalPlateLaminarChurchillChu1975(rayleigh: number, prandtl: number): number {
  const small = Math.cbrt(Math.cbrt(churchillPrandtl(prandtl)));
  const square = small * small;
  return 0.68 + (0.67 * Math.sqrt(Math.sqrt(rayleigh))) / (square * square);
}

export const card = defineCard({
  id: 'nusseltVerticalPlateLaminarChurchillChu1975',
  title: 'Vertical plate in still air, laminar (Churchill & Chu 1975)',
  equation: 'Nu = 0.68 + 0.670·Ra^(1/4)/(1 + (0.492/Pr)^(9/16))^(4/9)',
  result: { name: 'Nusselt number on the height', unit: '1', symbol: 'Nu' },
  symbols: { rayleigh: 'Ra', prandtl: 'Pr' },
  source: { key: 'churchillChu1975', where: 'as given in Incropera eq. 9.27' },
  range: { rayleigh: [null, 1e9] },
  rangeFrom: 'memory',
  scatter: { sigma: 0.1, from: 'memory' },
  assumes: ['isothermalPlate', 'stillRoom'],
  example: {
    given: { rayleigh: 1e8, prandtl: 0.71 },
    printed: '52.105',
    kind: 'worked again',
    where: 'separate computation of the same form',
  },
  evaluate: ({ rayleigh, prandtl }) => nusseltVerticalPlateLaminarChurchillChu1975(rayleigh, prandtl),
});
