import { describe, expect, test } from 'vitest';
import type { LinkLaw } from '../../../../src/core/airflow/linkLaw.ts';
import {
  type AirNetwork,
  createAirState,
  gradientStep,
  largestFlow,
  massImbalance,
  solveNetwork,
} from '../../../../src/core/airflow/network.ts';
import { prepareFanCurve } from '../../../../src/core/fan/fanCurve.ts';

const rho = 1.2;
const loss = (K: number, area_m2: number): LinkLaw => ({ kind: 'loss', loss: K, area_m2, size_m: 10 });
const head_Pa = (K: number, area: number, q: number) => 0.5 * rho * K * (q / (rho * area)) ** 2;

function stateOf(network: AirNetwork, start = 1e-3) {
  const state = createAirState(network);
  state.rho.fill(rho);
  state.mu.fill(1.8e-5);
  state.massFlow.fill(start);
  return state;
}

/** Room → 1 → 2 → room, the second stretch twofold. */
const meshed: AirNetwork = {
  nodeCount: 3,
  links: [
    { from: 1, to: 2, law: loss(1, 2e-3) },
    { from: 2, to: 0, law: loss(1.5, 1e-3) },
    { from: 2, to: 0, law: loss(6, 1e-3) },
  ],
};

describe('solveNetwork', () => {
  test('shares a flow between unlike ways as worked by hand: 2 to 1', () => {
    const state = stateOf(meshed);
    state.feed[1] = 6e-3;
    expect(solveNetwork(meshed, state).converged).toBe(true);
    expect(state.massFlow[0]).toBeCloseTo(6e-3, 12);
    expect(state.massFlow[1]).toBeCloseTo(4e-3, 9);
    expect(state.massFlow[2]).toBeCloseTo(2e-3, 9);
    expect(state.head[2]).toBeCloseTo(head_Pa(1.5, 1e-3, 4e-3), 5);
    expect(state.head[1]).toBeCloseTo(head_Pa(1.5, 1e-3, 4e-3) + head_Pa(1, 2e-3, 6e-3), 5);
    expect(massImbalance(meshed, state)).toBeLessThan(1e-15);
  });

  test('finds the same from a start against the stream', () => {
    const state = stateOf(meshed, -5e-3);
    state.feed[1] = 6e-3;
    expect(solveNetwork(meshed, state).converged).toBe(true);
    expect(state.massFlow[1]).toBeCloseTo(4e-3, 9);
  });

  test('lets a fan meet its box: 40 − 4000 Q = ½ρK(Q/A)² worked by hand', () => {
    // Q 5e-3 m³/s: 20 Pa left; K·½·1.2·(5)² = 20 on 1e-3 m².
    const K = 20 / (0.6 * 25);
    const curve = prepareFanCurve([
      { flow_m3PerS: 0, dp_Pa: 40 },
      { flow_m3PerS: 0.01, dp_Pa: 0 },
    ]);
    const network: AirNetwork = {
      nodeCount: 2,
      links: [
        { from: 0, to: 1, law: { kind: 'fan', curve, speedRatio: 1, flowFactor: 1 } },
        { from: 1, to: 0, law: loss(K, 1e-3) },
      ],
    };
    const state = stateOf(network);
    expect(solveNetwork(network, state).converged).toBe(true);
    expect((state.massFlow[0] as number) / rho).toBeCloseTo(5e-3, 9);
    expect(state.head[1]).toBeCloseTo(20, 5);
  });

  test('keeps an imposed flow and tells the head it needs', () => {
    const network: AirNetwork = {
      nodeCount: 2,
      links: [
        { from: 0, to: 1, law: loss(1, 1) },
        { from: 1, to: 0, law: loss(3, 1e-3) },
      ],
    };
    const state = stateOf(network);
    state.massFlow[0] = 2e-3;
    expect(solveNetwork(network, state, 0).converged).toBe(true);
    expect([...state.massFlow]).toEqual([2e-3, 2e-3]);
    expect(state.head[1]).toBeCloseTo(head_Pa(3, 1e-3, 2e-3), 5);
  });

  test('is driven by lift alone, up the warm side and down the other', () => {
    const network: AirNetwork = {
      nodeCount: 2,
      links: [
        { from: 0, to: 1, law: loss(2, 1e-3) },
        { from: 1, to: 0, law: loss(2, 1e-3) },
      ],
    };
    const state = stateOf(network);
    state.lift[0] = 0.6;
    expect(solveNetwork(network, state).converged).toBe(true);
    expect(state.massFlow[0]).toBeGreaterThan(0);
    expect(head_Pa(4, 1e-3, state.massFlow[0] as number)).toBeCloseTo(0.6, 5);
    expect(state.massFlow[1]).toBeCloseTo(state.massFlow[0] as number, 14);
  });

  test('gives up, and says so, where a node hangs in the air', () => {
    const network: AirNetwork = { nodeCount: 3, links: [{ from: 1, to: 0, law: loss(1, 1e-3) }] };
    expect(solveNetwork(network, stateOf(network)).converged).toBe(false);
    expect(gradientStep(network, stateOf(network), -1, 1)).toBeNaN();
  });
});

describe('largestFlow', () => {
  test('does not care for the direction', () => {
    const state = stateOf(meshed);
    state.massFlow.set([1, -3, 2]);
    expect(largestFlow(state)).toBe(3);
  });
});

describe('massImbalance', () => {
  test('is what goes in and not out at the worst node', () => {
    const state = stateOf(meshed);
    state.massFlow.set([5, 2, 1]);
    state.feed[1] = 4;
    expect(massImbalance(meshed, state)).toBe(2);
  });
});
