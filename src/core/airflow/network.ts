import { solveDense } from '../solve/denseSolve.ts';
import { type LinkLaw, linkDrop } from './linkLaw.ts';

/** One way between two nodes. Flow counts positive from `from` to `to`. */
export interface AirLink {
  readonly from: number;
  readonly to: number;
  readonly law: LinkLaw;
}

/** Node 0 is the room: its pressure is the datum. */
export interface AirNetwork {
  readonly nodeCount: number;
  readonly links: readonly AirLink[];
}

/** The moving part of a network: everything a solve reads and writes, allocated once. */
export interface AirState {
  /** kg/s, one a link. */
  readonly massFlow: Float64Array;
  /** Density and viscosity of the air in each link. */
  readonly rho: Float64Array;
  readonly mu: Float64Array;
  /** Pressure gained by buoyancy along each link, in flow direction. */
  readonly lift: Float64Array;
  /** How fast gain less drop falls with flow besides, Pa·s/kg, where more air means cooler air. Steers, does not weigh. */
  readonly fade: Float64Array;
  /** Pa over the room, one a node. */
  readonly head: Float64Array;
  /** Pressure drop of each link at the last evaluation, and its derivative by mass flow. */
  readonly drop: Float64Array;
  readonly slope: Float64Array;
  /** Pressure by which each link's law and the heads at its ends disagree. */
  readonly residual: Float64Array;
  readonly matrix: Float64Array;
  readonly rhs: Float64Array;
  /** Mass fed in at each node, kg/s. */
  readonly feed: Float64Array;
}

export function createAirState(network: AirNetwork): AirState {
  const links = network.links.length;
  const { nodeCount } = network;
  const free = nodeCount - 1;
  // One block of memory for all: a dozen small allocations would cost more than a step of the solver.
  const block = new ArrayBuffer(8 * (8 * links + 2 * nodeCount + free * (free + 1)));
  let used = 0;
  const take = (length: number) => {
    const part = new Float64Array(block, used, length);
    used += 8 * length;
    return part;
  };
  return {
    massFlow: take(links),
    rho: take(links),
    mu: take(links),
    lift: take(links),
    fade: take(links),
    head: take(nodeCount),
    drop: take(links),
    slope: take(links),
    residual: take(links),
    matrix: take(free * free),
    rhs: take(free),
    feed: take(nodeCount),
  };
}

const law = new Float64Array(2);
/** Keeps a link with a flat law (a fan at shut-off, a wide opening) from being infinitely conductive. */
const leastSlope = 1e-3;

/**
 * One step of the global gradient method: all flows and heads at once, Newton on the link laws, mass balanced exactly.
 * @param imposed link whose flow stays as it is (its law is not read), or -1
 * @returns largest change of a link's flow, kg/s; NaN where the network has an unconnected node
 */
export function gradientStep(network: AirNetwork, state: AirState, imposed: number, relax: number): number {
  const { links, nodeCount } = network;
  const { massFlow, rho, mu, lift, fade, head, drop, slope, residual, matrix, rhs, feed } = state;
  const free = nodeCount - 1;
  matrix.fill(0);
  for (let node = 0; node < free; node++) rhs[node] = feed[node + 1] as number;
  for (let i = 0; i < links.length; i++) {
    const link = links[i] as AirLink;
    const a = link.from - 1;
    const b = link.to - 1;
    const q = massFlow[i] as number;
    let carried = q;
    if (i !== imposed) {
      linkDrop(law, link.law, q, rho[i] as number, mu[i] as number);
      const s = (law[1] as number) + (fade[i] as number);
      const d = Math.abs(s) > leastSlope ? s : leastSlope;
      // What the link lacks at the present flows and heads; from here on only corrections are solved for, so that a wide
      // opening behind a tight one does not lose its flow in the rounding of the large pressures.
      const lack =
        (law[0] as number) - (lift[i] as number) - (head[link.from] as number) + (head[link.to] as number);
      drop[i] = law[0] as number;
      slope[i] = d;
      residual[i] = lack;
      carried = q - lack / d;
      const g = 1 / d;
      if (a >= 0) matrix[a * free + a] = (matrix[a * free + a] as number) + g;
      if (b >= 0) matrix[b * free + b] = (matrix[b * free + b] as number) + g;
      if (a >= 0 && b >= 0) {
        matrix[a * free + b] = (matrix[a * free + b] as number) - g;
        matrix[b * free + a] = (matrix[b * free + a] as number) - g;
      }
    }
    if (a >= 0) rhs[a] = (rhs[a] as number) - carried;
    if (b >= 0) rhs[b] = (rhs[b] as number) + carried;
  }
  if (!solveDense(matrix, rhs, free)) return Number.NaN;
  let change = 0;
  for (let i = 0; i < links.length; i++) {
    if (i === imposed) continue;
    const link = links[i] as AirLink;
    const from = link.from > 0 ? (rhs[link.from - 1] as number) : 0;
    const to = link.to > 0 ? (rhs[link.to - 1] as number) : 0;
    const step = (from - to - (residual[i] as number)) / (slope[i] as number);
    massFlow[i] = (massFlow[i] as number) + relax * step;
    const size = Math.abs(step);
    if (size > change) change = size;
  }
  for (let node = 0; node < free; node++)
    head[node + 1] = (head[node + 1] as number) + relax * (rhs[node] as number);
  return change;
}

export interface NetworkResult {
  readonly converged: boolean;
  readonly iterations: number;
}

/**
 * Flows and heads of a network at the densities and viscosities in `state`, from the flows already there.
 * Global gradient method (Todini & Pilati 1988); steps are shortened when the plain Newton step does not settle.
 */
export function solveNetwork(
  network: AirNetwork,
  state: AirState,
  imposed = -1,
  tolerance = 1e-12,
): NetworkResult {
  let relax = 1;
  let before = Number.POSITIVE_INFINITY;
  for (let iteration = 1; iteration <= 200; iteration++) {
    const change = gradientStep(network, state, imposed, relax);
    if (!Number.isFinite(change)) return { converged: false, iterations: iteration };
    if (change <= tolerance * (1e-6 + largestFlow(state))) return { converged: true, iterations: iteration };
    if (iteration > 15 && change > 0.5 * before) relax = Math.max(0.2, relax * 0.7);
    before = change;
  }
  return { converged: false, iterations: 200 };
}

export function largestFlow({ massFlow }: AirState): number {
  let most = 0;
  for (let i = 0; i < massFlow.length; i++) most = Math.max(most, Math.abs(massFlow[i] as number));
  return most;
}

/** Mass in minus mass out at the worst free node, kg/s. */
export function massImbalance(network: AirNetwork, state: AirState): number {
  const { links } = network;
  const sum = state.feed.slice();
  for (let i = 0; i < links.length; i++) {
    const { from, to } = links[i] as AirLink;
    const q = state.massFlow[i] as number;
    sum[from] = (sum[from] as number) - q;
    sum[to] = (sum[to] as number) + q;
  }
  let worst = 0;
  for (let node = 1; node < network.nodeCount; node++) worst = Math.max(worst, Math.abs(sum[node] as number));
  return worst;
}
