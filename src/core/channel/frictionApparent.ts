import { defineCard } from '../card.ts';

/** Square of the entrance constant 3.44 of the developing boundary layers. */
export const entranceSquared = 3.44 * 3.44;

/**
 * Apparent Fanning f·Re over a channel from its entrance: boundary layers at first, developed flow later, joined by
 * their root sum of squares. It already holds the momentum change of the profile: entrance losses must not count that again.
 * @param xPlus L/(D_h·Re)
 */
export function frictionApparent(xPlus: number, developed: number): number {
  return Math.sqrt(entranceSquared / xPlus + developed * developed);
}

export const card = defineCard({
  id: 'frictionApparent',
  title: 'Apparent friction from the entrance on, laminar',
  equation: 'f_app·Re = √((3.44/√(x⁺))² + (f·Re)²)',
  result: { name: 'apparent f·Re, Fanning', unit: '1', symbol: 'f_app·Re' },
  symbols: { xPlus: 'x⁺', developed: 'f·Re' },
  source: { key: 'muzychkaYovanovich2009', where: 'composite model' },
  range: { xPlus: [5e-4, null], developed: [14, 24] },
  rangeFrom: 'computed',
  scatter: { sigma: 0.04, from: 'computed' },
  assumes: ['smoothWall', 'uniformInlet', 'incompressible'],
  example: {
    given: { xPlus: 0.01, developed: 24 },
    printed: '41.945',
    kind: 'worked again',
    where: 'worked by hand; boundary-layer solution 40.23',
  },
  evaluate: ({ xPlus, developed }) => frictionApparent(xPlus, developed),
});
