import { defineCard } from '../card.ts';
import { evaluatePchip, preparePchip } from '../solve/pchip.ts';

const aspects = [0, 0.1, 0.2, 0.25, 0.5, 1];
const curve = preparePchip(aspects, [1.2, 1.2365, 1.2713, 1.2876, 1.3475, 1.3784]);
const out = new Float64Array(2);

/** Momentum of a developed laminar profile over that of an even one: what a jet can win back behind a channel. */
export function momentumFactor(aspect: number): number {
  evaluatePchip(curve, Math.min(Math.max(aspect, 0), 1), out);
  return out[0] as number;
}

export const card = defineCard({
  id: 'momentumFactor',
  title: 'Momentum factor of a developed channel profile',
  equation: 'K_d = table(α)',
  result: { name: 'momentum factor', unit: '1', symbol: 'K_d' },
  symbols: { aspect: 'α' },
  source: { key: 'ownComputation', where: 'exact velocity profile; 6/5 between plates' },
  range: { aspect: [0, 1] },
  rangeFrom: 'computed',
  scatter: { sigma: 0.001, from: 'computed' },
  assumes: [],
  example: {
    given: { aspect: 0.25 },
    printed: '1.2876',
    kind: 'worked again',
    where: 'a knot of the table itself',
  },
  evaluate: ({ aspect }) => momentumFactor(aspect),
});
