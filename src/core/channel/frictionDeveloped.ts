import { defineCard } from '../card.ts';

/** Fanning f·Re of fully developed laminar flow in a rectangular channel, on its hydraulic diameter; polynomial fit. */
export function frictionDeveloped(aspect: number): number {
  return (
    24 * (1 - aspect * (1.3553 - aspect * (1.9467 - aspect * (1.7012 - aspect * (0.9564 - 0.2537 * aspect)))))
  );
}

export const card = defineCard({
  id: 'frictionDeveloped',
  title: 'Friction in a rectangular channel, laminar, developed',
  equation: 'f·Re = 24·(1 − 1.3553·α + 1.9467·α² − 1.7012·α³ + 0.9564·α⁴ − 0.2537·α⁵)',
  result: { name: 'f·Re, Fanning, on the hydraulic diameter', unit: '1', symbol: 'f·Re' },
  symbols: { aspect: 'α' },
  source: { key: 'shahLondon1978', where: 'rectangular ducts, polynomial' },
  range: { aspect: [0, 1] },
  rangeFrom: 'source',
  scatter: { sigma: 0.0006, from: 'computed' },
  assumes: ['smoothWall'],
  example: {
    given: { aspect: 0.25 },
    printed: '18.2328',
    kind: 'computed elsewhere',
    where: 'independent collocation solution, 5 digits',
    because: 'the fit is stated to 0.06 %',
    within: 0.001,
  },
  evaluate: ({ aspect }) => frictionDeveloped(aspect),
});
