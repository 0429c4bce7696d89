import { defineCard } from '../card.ts';
import { churchillPrandtl } from './churchillPrandtl.ts';

/** What multiplies the sixth root of the Rayleigh number, 0.387/[1 + (0.492/Pr)^(9/16)]^(8/27): worked once for an air. */
export function plateSlope(prandtl: number): number {
  const small = Math.cbrt(Math.cbrt(Math.cbrt(churchillPrandtl(prandtl))));
  const square = small * small;
  const fourth = square * square;
  return 0.387 / (fourth * fourth);
}

export function nusseltBySlope(rayleigh: number, slope: number): number {
  const root = 0.825 + slope * Math.sqrt(Math.cbrt(rayleigh));
  return root * root;
}

/**
 * Free convection from a vertical plate of any height, laminar and turbulent in one formula.
 * For laminar flow alone the other formula of the same authors is a few per cent closer.
 */
export function nusseltVerticalPlateChurchillChu1975(rayleigh: number, prandtl: number): number {
  return nusseltBySlope(rayleigh, plateSlope(prandtl));
}

export const card = defineCard({
  id: 'nusseltVerticalPlateChurchillChu1975',
  title: 'Vertical plate in still air (Churchill & Chu 1975)',
  equation: 'Nu = (0.825 + 0.387·Ra^(1/6)/(1 + (0.492/Pr)^(9/16))^(8/27))²',
  result: { name: 'Nusselt number on the height', unit: '1', symbol: 'Nu' },
  symbols: { rayleigh: 'Ra', prandtl: 'Pr' },
  source: { key: 'churchillChu1975', where: 'as given in Incropera eq. 9.26' },
  range: { rayleigh: [null, 1e12] },
  rangeFrom: 'memory',
  scatter: { sigma: 0.1, from: 'memory' },
  assumes: ['isothermalPlate', 'stillRoom'],
  example: {
    given: { rayleigh: 1.813e9, prandtl: 0.69 },
    printed: '147',
    kind: 'worked example',
    where: 'Incropera ex. 9.2',
  },
  evaluate: ({ rayleigh, prandtl }) => nusseltVerticalPlateChurchillChu1975(rayleigh, prandtl),
});
