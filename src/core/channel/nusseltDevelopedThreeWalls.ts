import { defineCard } from '../card.ts';
import { evaluatePchip, preparePchip } from '../solve/pchip.ts';

const aspects = [0, 0.05, 0.1, 0.125, 1 / 6, 0.2, 0.25, 1 / 3, 0.5, 1];
const threeWalls = [7.5407, 6.8031, 6.1878, 5.92, 5.5269, 5.2554, 4.9096, 4.4631, 3.8735, 3.0246];
const curve = preparePchip(aspects, threeWalls);
const out = new Float64Array(2);

/**
 * Developed Nusselt number of a channel whose short wall at the fin tips gives no heat (a cover on the tips). 9 to 14 %
 * more on the heated walls than with four at aspects of 0.2 to 0.5: the solver keeps the four-wall value, which is on
 * the warm side.
 */
export function nusseltDevelopedThreeWalls(aspect: number): number {
  evaluatePchip(curve, Math.min(Math.max(aspect, 0), 1), out);
  return out[0] as number;
}

export const card = defineCard({
  id: 'nusseltDevelopedThreeWalls',
  title: 'Heat transfer in a capped fin channel, laminar, developed',
  equation: 'Nu_T = table(α); one short wall without heat',
  result: {
    name: 'Nusselt number on the heated walls and the hydraulic diameter',
    unit: '1',
    symbol: 'Nu_T',
  },
  symbols: { aspect: 'α' },
  source: { key: 'ownComputation', where: 'Chebyshev collocation, N 30' },
  range: { aspect: [0, 1] },
  rangeFrom: 'computed',
  scatter: { sigma: 0.002, from: 'computed' },
  assumes: ['uniformWallTemperature'],
  example: {
    given: { aspect: 0.25 },
    printed: '4.9096',
    kind: 'worked again',
    where: 'a knot of the table itself; four walls give 4.4405',
  },
  evaluate: ({ aspect }) => nusseltDevelopedThreeWalls(aspect),
});
