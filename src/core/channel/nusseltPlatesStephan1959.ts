import { defineCard } from '../card.ts';

/** Mean Nusselt number between plates at one temperature, developing together: Stephan's fit, a second opinion. */
export function nusseltPlatesStephan1959(xStar: number, prandtl: number): number {
  return 7.55 + (0.024 * xStar ** -1.14) / (1 + 0.0358 * prandtl ** 0.17 * xStar ** -0.64);
}

export const card = defineCard({
  id: 'nusseltPlatesStephan1959',
  title: 'Heat transfer between plates from the entrance on (fit)',
  equation: 'Nu = 7.55 + 0.024·x*^(−1.14)/(1 + 0.0358·Pr^0.17·x*^(−0.64))',
  result: { name: 'mean Nusselt number on the hydraulic diameter, log-mean basis', unit: '1', symbol: 'Nu' },
  symbols: { xStar: 'x*', prandtl: 'Pr' },
  source: { key: 'stephan1959', where: 'as in handbooks' },
  range: { xStar: [0.0005, 1], prandtl: [0.1, 1000] },
  rangeFrom: 'memory',
  scatter: { sigma: 0.06, from: 'computed' },
  assumes: ['uniformWallTemperature', 'uniformInlet'],
  example: {
    given: { xStar: 0.01, prandtl: 0.71 },
    printed: '10.68',
    kind: 'computed elsewhere',
    where: 'independent boundary-layer solution',
    because: 'the fit is 3.3 % below it here',
    within: 0.035,
  },
  evaluate: ({ xStar, prandtl }) => nusseltPlatesStephan1959(xStar, prandtl),
});
