import { describe, expect, test } from 'vitest';
import { createHeatNetwork, solveHeatNetwork } from '../../../../src/core/heat/network.ts';

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
