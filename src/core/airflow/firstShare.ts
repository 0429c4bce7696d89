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
  equation:
    'Σṁ = 0 at every node; Δp(ṁ) = p_from − p_to on every link; all at once by the global gradient method',
  result: { name: 'share of the flow', unit: '1' },
  source: {
    key: 'todiniPilati1988',
    where: 'the method; passages side by side as in the plate-fin bypass studies',
  },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: 0.05, from: 'source' },
  assumes: ['ownDynamicHead', 'evenFeed', 'incompressible', 'steady'],
  example: {
    given: { lossA: 1, areaA_m2: 2e-3, lossB: 4, areaB_m2: 1e-3, massFlow_kgPerS: 5e-3 },
    printed: '0.8000',
    kind: 'computed elsewhere',
    where: 'worked by hand: A/√K is 2 against 0.5 (in 10⁻³ m²)',
  },
  evaluate: ({ lossA, areaA_m2, lossB, areaB_m2, massFlow_kgPerS }) =>
    firstShare(lossA, areaA_m2, lossB, areaB_m2, massFlow_kgPerS),
});
