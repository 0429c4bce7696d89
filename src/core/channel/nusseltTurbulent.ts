import { defineCard } from '../card.ts';

/** Mean Nusselt number of turbulent flow in a smooth duct (Gnielinski), with the entrance factor 1 + (D_h/L)^⅔. */
export function nusseltTurbulent(reynolds: number, prandtl: number, lengthOverDiameter: number): number {
  const log = 0.79 * Math.log(reynolds) - 1.64;
  const eighth = 0.125 / (log * log);
  const pr = Math.cbrt(prandtl);
  const long = (eighth * (reynolds - 1000) * prandtl) / (1 + 12.7 * Math.sqrt(eighth) * (pr * pr - 1));
  const short = Math.cbrt(1 / lengthOverDiameter);
  return long * (1 + short * short);
}

export const card = defineCard({
  id: 'nusseltTurbulent',
  title: 'Heat transfer in a smooth duct, turbulent',
  equation:
    'Nu = (f/8)·(Re − 1000)·Pr/(1 + 12.7·√(f/8)·(Pr^(2/3) − 1))·(1 + λ^(−2/3)); f = (0.79·ln(Re) − 1.64)^(−2); λ is length over diameter',
  result: { name: 'mean Nusselt number on the hydraulic diameter', unit: '1', symbol: 'Nu' },
  symbols: { reynolds: 'Re', prandtl: 'Pr', lengthOverDiameter: 'λ' },
  source: { key: 'gnielinski1976', where: 'with entrance factor' },
  range: { reynolds: [3000, 5e6], prandtl: [0.5, 2000], lengthOverDiameter: [1, null] },
  rangeFrom: 'textbook',
  scatter: { sigma: 0.1, from: 'memory' },
  assumes: ['smoothWall'],
  example: {
    given: { reynolds: 1e4, prandtl: 0.707, lengthOverDiameter: 1e12 },
    printed: '29.965',
    kind: 'worked again',
    where: 'computed with the published formula, long duct',
  },
  evaluate: ({ reynolds, prandtl, lengthOverDiameter }) =>
    nusseltTurbulent(reynolds, prandtl, lengthOverDiameter),
});
