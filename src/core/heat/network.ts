import { solveBanded } from '../solve/bandedSolve.ts';

/** Which nodes the conductances of a network join: what does not change with their values. */
export interface HeatTopology {
  readonly nodeCount: number;
  readonly halfBandwidth: number;
  /** First and second node of each conductance. */
  readonly a: readonly number[];
  readonly b: readonly number[];
  /** Where each conductance stands in the band: at both nodes' own places and at the place between them, -1 for the datum. */
  readonly places: Int32Array;
}

/**
 * A linear heat network: nodes in an order that keeps neighbours close, conductances between two nodes or from a node to
 * the datum (`b = -1`), powers at nodes. Temperatures are rises over the datum, whatever that is. Made once for a topology;
 * conductances and powers may be rewritten before every solve.
 */
export interface HeatNetwork extends HeatTopology {
  readonly G_WPerK: Float64Array;
  readonly power_W: Float64Array;
  readonly rise_K: Float64Array;
}

/** @param a, b node numbers of each conductance; `-1` in `b` is the datum */
export function heatTopology(nodeCount: number, a: readonly number[], b: readonly number[]): HeatTopology {
  let reach = 0;
  for (let i = 0; i < a.length; i++) {
    const q = b[i] as number;
    if (q >= 0) reach = Math.max(reach, Math.abs((a[i] as number) - q));
  }
  const width = reach + 1;
  const places = new Int32Array(3 * a.length);
  for (let i = 0; i < a.length; i++) {
    const p = a[i] as number;
    const q = b[i] as number;
    places[3 * i] = p * width;
    places[3 * i + 1] = q < 0 ? -1 : q * width;
    places[3 * i + 2] = q < 0 ? -1 : Math.min(p, q) * width + Math.abs(p - q);
  }
  return { nodeCount, halfBandwidth: reach, a, b, places };
}

/** A network without conductances, powers or warmth yet. */
export function heatNetworkOf(topology: HeatTopology): HeatNetwork {
  const { nodeCount, halfBandwidth, a, b, places } = topology;
  const joins = a.length;
  // One block of memory for all three, as for the air.
  const block = new ArrayBuffer(8 * (joins + 2 * nodeCount));
  return {
    nodeCount,
    halfBandwidth,
    a,
    b,
    places,
    G_WPerK: new Float64Array(block, 0, joins),
    power_W: new Float64Array(block, 8 * joins, nodeCount),
    rise_K: new Float64Array(block, 8 * (joins + nodeCount), nodeCount),
  };
}

/** Both at once, for a network of its own. */
export function createHeatNetwork(
  nodeCount: number,
  a: readonly number[],
  b: readonly number[],
): HeatNetwork {
  return heatNetworkOf(heatTopology(nodeCount, a, b));
}

/** Room for the band of one solve: written anew every time, so that all networks may share it. */
let scratch = new Float64Array(0);

function emptyBand({ nodeCount, halfBandwidth }: HeatTopology): Float64Array {
  const length = nodeCount * (halfBandwidth + 1);
  if (scratch.length < length) scratch = new Float64Array(length);
  else scratch.fill(0, 0, length);
  return scratch;
}

/**
 * Steady rises of every node, direct solve of the symmetric band.
 * @returns false where a node has no way to the datum
 */
export function solveHeatNetwork(network: HeatNetwork): boolean {
  network.rise_K.set(network.power_W);
  return solveWithConductances(network, emptyBand(network));
}

/**
 * Rises after one backward Euler step: each node joined to its own past by capacity over step. Never rings, whatever the step;
 * heat in, heat out and heat stored agree to rounding in every single step.
 * @param from_K rises at the start of the step; may be the network's own `rise_K`
 * @returns false where a node has neither capacity nor a way to the datum
 */
export function solveHeatStep(
  network: HeatNetwork,
  capacity_JPerK: Float64Array,
  from_K: Float64Array,
  step_s: number,
): boolean {
  const { rise_K, power_W, halfBandwidth, nodeCount } = network;
  const width = halfBandwidth + 1;
  const band = emptyBand(network);
  for (let i = 0; i < nodeCount; i++) {
    const held = (capacity_JPerK[i] as number) / step_s;
    band[i * width] = held;
    rise_K[i] = (power_W[i] as number) + held * (from_K[i] as number);
  }
  return solveWithConductances(network, band);
}

function solveWithConductances(network: HeatNetwork, band: Float64Array): boolean {
  const { places, G_WPerK, rise_K, halfBandwidth, nodeCount } = network;
  for (let i = 0, at = 0; i < G_WPerK.length; i++, at += 3) {
    const g = G_WPerK[i] as number;
    const p = places[at] as number;
    const q = places[at + 1] as number;
    band[p] = (band[p] as number) + g;
    if (q < 0) continue;
    const off = places[at + 2] as number;
    band[q] = (band[q] as number) + g;
    band[off] = (band[off] as number) - g;
  }
  return solveBanded(band, rise_K, nodeCount, halfBandwidth);
}

/** Watts that leave to the datum at the present rises. */
export function toDatum_W({ a, b, G_WPerK, rise_K }: HeatNetwork): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++)
    if ((b[i] as number) < 0) sum += (G_WPerK[i] as number) * (rise_K[a[i] as number] as number);
  return sum;
}
