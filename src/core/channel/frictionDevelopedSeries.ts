import { defineCard } from '../card.ts';

/** The same f·Re from the exact series of the velocity profile: reference for the fit, too slow for the solver. */
export function frictionDevelopedSeries(aspect: number): number {
  let sum = 0;
  for (let n = 1; n <= 199; n += 2) sum += Math.tanh((n * Math.PI) / (2 * aspect)) / n ** 5;
  const ratio = 1 - ((192 * aspect) / Math.PI ** 5) * sum;
  return 24 / ((1 + aspect) * (1 + aspect) * ratio);
}

export const card = defineCard({
  id: 'frictionDevelopedSeries',
  title: 'Friction in a rectangular channel, exact series',
  equation: 'f·Re = 24/((1 + α)²·(1 − 192·α/π⁵·Σ tanh(n·π/(2·α))/n⁵)); n odd',
  result: { name: 'f·Re, Fanning, on the hydraulic diameter', unit: '1', symbol: 'f·Re' },
  symbols: { aspect: 'α' },
  source: { key: 'shahLondon1978', where: 'rectangular ducts, exact solution' },
  range: { aspect: [1e-4, 1] },
  rangeFrom: 'computed',
  scatter: { sigma: 1e-6, from: 'computed' },
  assumes: ['smoothWall'],
  example: {
    given: { aspect: 0.25 },
    printed: '18.2328',
    kind: 'computed elsewhere',
    where: 'independent collocation solution',
  },
  evaluate: ({ aspect }) => frictionDevelopedSeries(aspect),
});
