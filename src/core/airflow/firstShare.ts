import { defineCard } from '../card.ts';
import { type AirNetwork, createAirState, solveNetwork } from './network.ts';

/**
 * Share of a flow that takes the first of two ways side by side, both with plain losses: the smallest case of the network
 * solver, small enough to work by hand, and the principle by which fins and gaps share the air.
 */
export function firstShare(
  lossA: number,
  areaA_m2: number,
  lossB: number,
  areaB_m2: number,
  massFlow_kgPerS: number,
): number {
  const way = (loss: number, area_m2: number) =>
    ({ kind: 'loss', loss, area_m2, size_m: Math.sqrt(area_m2) }) as const;
  const network: AirNetwork = {
    nodeCount: 2,
    links: [
      { from: 1, to: 0, law: way(lossA, areaA_m2) },
      { from: 1, to: 0, law: way(lossB, areaB_m2) },
    ],
  };
  const state = createAirState(network);
  state.rho.fill(1.2);
  state.mu.fill(1.8e-5);
  state.massFlow.fill(massFlow_kgPerS / 2);
  state.feed[1] = massFlow_kgPerS;
  solveNetwork(network, state);
  return (state.massFlow[0] as number) / massFlow_kgPerS;
}

export const card = defineCard({
  id: 'airNetwork',
  title: 'Air shared between passages: network of nodes and links',
  equation: 'Δp_n = Δp − Δp_d; Σ ṁ = 0 at every node; all at once by the global gradient method',
  result: {
    name: 'pressure between two nodes, the same by every way that joins them',
    unit: 'Pa',
    symbol: 'Δp_n',
  },
  symbols: { drop_Pa: 'Δp', draught_Pa: 'Δp_d' },
  source: {
    key: 'todiniPilati1988',
    where: 'the method; passages side by side as in the plate-fin bypass studies',
  },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: 0.05, from: 'source' },
  assumes: ['ownDynamicHead', 'evenFeed', 'incompressible', 'steady'],
  example: {
    given: { drop_Pa: 12.5, draught_Pa: 0.2 },
    printed: '12.3',
    kind: 'worked again',
    where: 'worked by hand: what a way takes, less what the warmth in it gives',
  },
  evaluate: ({ drop_Pa, draught_Pa }) => drop_Pa - draught_Pa,
});
