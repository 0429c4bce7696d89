import { defineCard } from '../card.ts';

/** The same with even heat flux along the channel and even temperature round it. */
export function nusseltDevelopedH1(aspect: number): number {
  return (
    8.235 *
    (1 - aspect * (2.0421 - aspect * (3.0853 - aspect * (2.4765 - aspect * (1.0578 - 0.1861 * aspect)))))
  );
}

export const card = defineCard({
  id: 'nusseltDevelopedH1',
  title: 'Heat transfer in a rectangular channel, laminar, developed, even flux',
  equation: 'Nu = 8.235·(1 − 2.0421·α + 3.0853·α² − 2.4765·α³ + 1.0578·α⁴ − 0.1861·α⁵)',
  result: { name: 'Nusselt number on the hydraulic diameter', unit: '1', symbol: 'Nu' },
  symbols: { aspect: 'α' },
  source: {
    key: 'shahLondon1978',
    where: 'rectangular ducts, H1 boundary condition; as in the Python library ht',
  },
  range: { aspect: [0, 1] },
  rangeFrom: 'source',
  scatter: { sigma: 0.001, from: 'computed' },
  assumes: ['uniformFlux'],
  example: {
    given: { aspect: 0.7 },
    printed: '3.75176',
    kind: 'worked again',
    where: 'documentation of ht, Nu_laminar_rectangular',
  },
  evaluate: ({ aspect }) => nusseltDevelopedH1(aspect),
});
