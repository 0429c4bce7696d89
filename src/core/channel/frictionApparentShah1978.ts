import { defineCard } from '../card.ts';

/** Apparent f·Re between parallel plates, Shah's fit: second opinion for the composite. */
export function frictionApparentShah1978(xPlus: number): number {
  const entrance = 3.44 / Math.sqrt(xPlus);
  return entrance + (24 + 0.674 / (4 * xPlus) - entrance) / (1 + 2.9e-5 / (xPlus * xPlus));
}

export const card = defineCard({
  id: 'frictionApparentShah1978',
  title: 'Apparent friction between plates',
  equation: 'f_app·Re = 3.44/√(x⁺) + (24 + 0.674/(4·x⁺) − 3.44/√(x⁺))/(1 + 2.9·10⁻⁵/(x⁺)²)',
  result: { name: 'apparent f·Re, Fanning', unit: '1', symbol: 'f_app·Re' },
  symbols: { xPlus: 'x⁺' },
  source: { key: 'shah1978', where: 'parallel plates' },
  range: { xPlus: [5e-4, 0.2] },
  rangeFrom: 'computed',
  scatter: { sigma: 0.02, from: 'computed' },
  assumes: ['smoothWall', 'uniformInlet'],
  example: {
    given: { xPlus: 0.01 },
    printed: '40.23',
    kind: 'computed elsewhere',
    where: 'independent boundary-layer solution',
    because: 'the fit is within 2.1 % of it',
    within: 0.022,
  },
  evaluate: ({ xPlus }) => frictionApparentShah1978(xPlus),
});
