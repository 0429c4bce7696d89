import { solveBanded } from '../solve/bandedSolve.ts';

/**
 * A linear heat network: nodes in an order that keeps neighbours close, conductances between two nodes or from a node
 * to a fixed temperature, powers at nodes. `b = -1` marks a conductance to the fixed temperature `fixed_K`.
 * Made once for a topology; conductances, powers and fixed temperatures may be rewritten before every solve.
 */
export interface HeatNetwork {
  readonly nodeCount: number;
  readonly halfBandwidth: number;
  readonly a: Int32Array;
  readonly b: Int32Array;
  readonly G_WPerK: Float64Array;
  readonly fixed_K: Float64Array;
  readonly power_W: Float64Array;
  readonly T_K: Float64Array;
  readonly band: Float64Array;
}

/** @param first, second node numbers of each conductance; `-1` as second node is a fixed temperature */
export function createHeatNetwork(nodeCount: number, first: readonly number[], second: readonly number[]): HeatNetwork {
  const count = first.length;
  const a = new Int32Array(count);
  const b = new Int32Array(count);
  let reach = 0;
  for (let i = 0; i < count; i++) {
    const p = first[i] as number;
    const q = second[i] as number;
    a[i] = p;
    b[i] = q;
    if (q >= 0) reach = Math.max(reach, Math.abs(p - q));
  }
  return {
    nodeCount,
    halfBandwidth: reach,
    a,
    b,
    G_WPerK: new Float64Array(count),
    fixed_K: new Float64Array(count),
    power_W: new Float64Array(nodeCount),
    T_K: new Float64Array(nodeCount),
    band: new Float64Array(nodeCount * (reach + 1)),
  };
}

/**
 * Steady temperatures of every node, direct solve of the symmetric band.
 * @returns false where a node has no way to any fixed temperature
 */
export function solveHeatNetwork(network: HeatNetwork): boolean {
  const { a, b, G_WPerK, fixed_K, power_W, T_K, band, halfBandwidth, nodeCount } = network;
  const width = halfBandwidth + 1;
  band.fill(0);
  T_K.set(power_W);
  for (let i = 0; i < a.length; i++) {
    const g = G_WPerK[i] as number;
    const p = a[i] as number;
    const q = b[i] as number;
    band[p * width] = (band[p * width] as number) + g;
    if (q < 0) {
      T_K[p] = (T_K[p] as number) + g * (fixed_K[i] as number);
    } else {
      band[q * width] = (band[q * width] as number) + g;
      const low = p < q ? p : q;
      const off = low * width + Math.abs(p - q);
      band[off] = (band[off] as number) - g;
    }
  }
  return solveBanded(band, T_K, nodeCount, halfBandwidth);
}

/** Watts that flow through conductance `i` from its first to its second node. */
export function flow_W(network: HeatNetwork, i: number): number {
  const { a, b, G_WPerK, fixed_K, T_K } = network;
  const from = T_K[a[i] as number] as number;
  const to = (b[i] as number) < 0 ? (fixed_K[i] as number) : (T_K[b[i] as number] as number);
  return (G_WPerK[i] as number) * (from - to);
}
