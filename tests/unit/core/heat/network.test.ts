import { describe, expect, test } from 'vitest';
import {
  createHeatNetwork,
  solveHeatNetwork,
  solveHeatStep,
  toDatum_W,
} from '../../../../src/core/heat/network.ts';

function solved(
  nodes: number,
  links: readonly (readonly [a: number, b: number, G: number])[],
  power_W: readonly number[],
) {
  const network = createHeatNetwork(
    nodes,
    links.map(([a]) => a),
    links.map(([, b]) => b),
  );
  network.G_WPerK.set(links.map(([, , G]) => G));
  network.power_W.set(power_W);
  return { ok: solveHeatNetwork(network), rise_K: [...network.rise_K], network };
}

describe('solveHeatNetwork', () => {
  test('adds up resistances in a row', () => {
    const { ok, rise_K } = solved(
      3,
      [
        [0, 1, 0.5],
        [1, 2, 0.25],
        [2, -1, 0.1],
      ],
      [2, 0, 0],
    );
    expect(ok).toBe(true);
    [32, 28, 20].forEach((rise, i) => {
      expect(rise_K[i]).toBeCloseTo(rise, 10);
    });
  });

  test('shares heat between ways as the conductances', () => {
    const { rise_K } = solved(
      3,
      [
        [0, 1, 1],
        [2, 0, 1],
        [1, -1, 1],
        [2, -1, 3],
      ],
      [5, 0, 0],
    );
    // 0.5 and 0.75 W/K beside one another.
    expect(rise_K[0]).toBeCloseTo(4, 10);
    expect(rise_K[1]).toBeCloseTo(2, 10);
    expect(rise_K[2]).toBeCloseTo(1, 10);
  });

  test('reaches as far as its farthest pair of nodes, in either order', () => {
    expect(
      solved(
        4,
        [
          [3, 0, 1],
          [0, 1, 1],
          [1, 2, 1],
          [2, -1, 1],
        ],
        [0, 0, 0, 1],
      ).network.halfBandwidth,
    ).toBe(3);
  });

  test('may be solved again after its conductances have changed', () => {
    const { network } = solved(1, [[0, -1, 1]], [3]);
    network.G_WPerK[0] = 2;
    expect(solveHeatNetwork(network)).toBe(true);
    expect(network.rise_K[0]).toBe(1.5);
  });

  test('tells a node without any way to the datum', () => {
    expect(solved(2, [[0, -1, 1]], [1, 1]).ok).toBe(false);
    expect(solved(2, [[0, 1, 1]], [1, 0]).ok).toBe(false);
  });
});

describe('solveHeatStep', () => {
  const pair = () => {
    const network = createHeatNetwork(2, [0, 1], [1, -1]);
    network.G_WPerK.set([0.5, 0.2]);
    network.power_W.set([3, 1]);
    return network;
  };
  const capacity = Float64Array.of(2, 5);

  test('balances heat in, out and kept in every single step, however long', () => {
    for (const step_s of [1e-6, 0.1, 7, 1e6]) {
      const network = pair();
      const from = Float64Array.of(40, -3);
      expect(solveHeatStep(network, capacity, from, step_s)).toBe(true);
      const kept_W = network.rise_K.reduce(
        (sum, rise, i) => sum + ((capacity[i] as number) * (rise - (from[i] as number))) / step_s,
        0,
      );
      // The smaller the step, the smaller the difference of two rises that the watts are told from.
      expect(Math.abs(4 - toDatum_W(network) - kept_W)).toBeLessThan(1e-13 * (40 / step_s + 4) * 10);
    }
  });

  test('a very long step is the steady answer, a very short one leaves everything as it was', () => {
    const network = pair();
    const from = Float64Array.of(40, -3);
    solveHeatStep(network, capacity, from, 1e-12);
    network.rise_K.forEach((rise, i) => {
      expect(rise).toBeCloseTo(from[i] as number, 9);
    });
    solveHeatStep(network, capacity, from, 1e15);
    expect(network.rise_K[1]).toBeCloseTo(20, 9);
    expect(network.rise_K[0]).toBeCloseTo(26, 9);
  });

  test('may start from the network’s own rises, in place', () => {
    const [own, other] = [pair(), pair()];
    own.rise_K.set([10, 4]);
    solveHeatStep(own, capacity, own.rise_K, 0.5);
    solveHeatStep(other, capacity, Float64Array.of(10, 4), 0.5);
    expect([...own.rise_K]).toEqual([...other.rise_K]);
  });
});

describe('toDatum_W', () => {
  test('is all that is put in, once the network is steady', () => {
    const { network } = solved(
      3,
      [
        [0, 1, 1],
        [2, 0, 1],
        [1, -1, 1],
        [2, -1, 3],
      ],
      [5, 2, 0.5],
    );
    expect(toDatum_W(network)).toBeCloseTo(7.5, 12);
  });
});
