import { defineCard } from '../card.ts';

/** Nusselt number of developed laminar flow in a rectangular channel, four walls at one temperature. */
export function nusseltDevelopedT(aspect: number): number {
  return (
    7.541 * (1 - aspect * (2.61 - aspect * (4.97 - aspect * (5.119 - aspect * (2.702 - 0.548 * aspect)))))
  );
}

export const card = defineCard({
  id: 'nusseltDevelopedT',
  title: 'Heat transfer in a rectangular channel, laminar, developed, even wall temperature',
  equation: 'Nu = 7.541·(1 − 2.610·α + 4.970·α² − 5.119·α³ + 2.702·α⁴ − 0.548·α⁵)',
  result: { name: 'Nusselt number on the hydraulic diameter', unit: '1', symbol: 'Nu' },
  symbols: { aspect: 'α' },
  source: { key: 'shahLondon1978', where: 'rectangular ducts, T boundary condition' },
  range: { aspect: [0, 1] },
  rangeFrom: 'source',
  scatter: { sigma: 0.004, from: 'computed' },
  assumes: ['uniformWallTemperature'],
  example: {
    given: { aspect: 0.2 },
    printed: '4.8283',
    kind: 'computed elsewhere',
    where: 'independent collocation solution',
    because: 'the fit is stated to 0.3 % here',
    within: 0.003,
  },
  evaluate: ({ aspect }) => nusseltDevelopedT(aspect),
});
