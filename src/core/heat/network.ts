import { solveBanded } from '../solve/bandedSolve.ts';

/**
 * A linear heat network: nodes in an order that keeps neighbours close, conductances between two nodes or from a node to
 * the datum (`b = -1`), powers at nodes. Temperatures are rises over the datum, whatever that is. Made once for a topology;
 * conductances and powers may be rewritten before every solve.
 */
export interface HeatNetwork {
  readonly nodeCount: number;
  readonly halfBandwidth: number;
  /** First and second node of each conductance. */
  readonly a: readonly number[];
  readonly b: readonly number[];
  readonly G_WPerK: Float64Array;
  readonly power_W: Float64Array;
  readonly rise_K: Float64Array;
  readonly band: Float64Array;
}

/** @param a, b node numbers of each conductance; `-1` in `b` is the datum */
export function createHeatNetwork(
  nodeCount: number,
  a: readonly number[],
  b: readonly number[],
): HeatNetwork {
  let reach = 0;
  for (let i = 0; i < a.length; i++) {
    const q = b[i] as number;
    if (q >= 0) reach = Math.max(reach, Math.abs((a[i] as number) - q));
  }
  return {
    nodeCount,
    halfBandwidth: reach,
    a,
    b,
    G_WPerK: new Float64Array(a.length),
    power_W: new Float64Array(nodeCount),
    rise_K: new Float64Array(nodeCount),
    band: new Float64Array(nodeCount * (reach + 1)),
  };
}

/**
 * Steady rises of every node, direct solve of the symmetric band.
 * @returns false where a node has no way to the datum
 */
export function solveHeatNetwork(network: HeatNetwork): boolean {
  const { a, b, G_WPerK, power_W, rise_K, band, halfBandwidth, nodeCount } = network;
  const width = halfBandwidth + 1;
  band.fill(0);
  rise_K.set(power_W);
  for (let i = 0; i < a.length; i++) {
    const g = G_WPerK[i] as number;
    const p = a[i] as number;
    const q = b[i] as number;
    band[p * width] = (band[p * width] as number) + g;
    if (q < 0) continue;
    band[q * width] = (band[q * width] as number) + g;
    const off = p < q ? p * width + q - p : q * width + p - q;
    band[off] = (band[off] as number) - g;
  }
  return solveBanded(band, rise_K, nodeCount, halfBandwidth);
}
