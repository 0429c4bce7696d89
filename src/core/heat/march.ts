import { defineCard } from '../card.ts';
import { type HeatNetwork, solveHeatStep, toDatum_W } from './network.ts';

/** A network on its way through time, with what every step needs, allocated once. */
export interface March {
  readonly network: HeatNetwork;
  readonly capacity_JPerK: Float64Array;
  /** Present rises over the datum. */
  readonly rise_K: Float64Array;
  readonly coarse_K: Float64Array;
  readonly half_K: Float64Array;
  time_s: number;
  /** Length of the next step to try. */
  step_s: number;
  /** Joules that powers have put in, and that have left to the datum. */
  put_J: number;
  left_J: number;
}

export function createMarch(network: HeatNetwork, capacity_JPerK: Float64Array, step_s: number): March {
  const { nodeCount } = network;
  return {
    network,
    capacity_JPerK,
    rise_K: network.rise_K.slice(),
    coarse_K: new Float64Array(nodeCount),
    half_K: new Float64Array(nodeCount),
    time_s: 0,
    step_s,
    put_J: 0,
    left_J: 0,
  };
}

/** Called between the two half steps and after a full one, with the rises there: conductances may be set anew. */
export type Refresh = (rise_K: Float64Array) => void;

/**
 * One accepted step, not beyond `end_s`. Backward Euler over the whole step and over two halves; twice the second less the
 * first is the answer, of second order and without ringing, their difference the error that sets the next step. Heat in,
 * heat out and heat stored agree to rounding, since every combination of balanced steps is balanced.
 * @param tolerance_K largest such difference of a step
 * @returns false where the network has no answer
 */
export function marchStep(march: March, end_s: number, tolerance_K: number, refresh?: Refresh): boolean {
  const { network, capacity_JPerK, rise_K, coarse_K, half_K } = march;
  for (let attempt = 0; attempt < 40; attempt++) {
    const step_s = Math.min(march.step_s, end_s - march.time_s);
    if (!solveHeatStep(network, capacity_JPerK, rise_K, step_s)) return false;
    coarse_K.set(network.rise_K);
    const firstPut_W = allPower_W(network);
    const coarseLeft_J = toDatum_W(network) * step_s;
    solveHeatStep(network, capacity_JPerK, rise_K, step_s / 2);
    half_K.set(network.rise_K);
    const firstLeft_J = (toDatum_W(network) * step_s) / 2;
    refresh?.(half_K);
    solveHeatStep(network, capacity_JPerK, half_K, step_s / 2);
    const fineLeft_J = firstLeft_J + (toDatum_W(network) * step_s) / 2;
    const finePut_J = ((firstPut_W + allPower_W(network)) * step_s) / 2;
    let error_K = 0;
    for (let i = 0; i < coarse_K.length; i++)
      error_K = Math.max(error_K, Math.abs((network.rise_K[i] as number) - (coarse_K[i] as number)));
    const grow = 0.9 * Math.sqrt(tolerance_K / Math.max(error_K, 1e-12));
    const last = attempt === 39 || step_s <= 1e-12;
    if (error_K <= tolerance_K || last) {
      for (let i = 0; i < rise_K.length; i++)
        rise_K[i] = 2 * (network.rise_K[i] as number) - (coarse_K[i] as number);
      march.left_J += 2 * fineLeft_J - coarseLeft_J;
      march.put_J += 2 * finePut_J - firstPut_W * step_s;
      march.time_s += step_s;
      // A step cut short by the end of its phase says nothing about the next one.
      if (step_s === march.step_s || grow < 1) march.step_s = step_s * Math.min(4, Math.max(0.3, grow));
      refresh?.(rise_K);
      return true;
    }
    march.step_s = step_s * Math.max(0.1, Math.min(0.7, grow));
    refresh?.(rise_K);
  }
  return false;
}

function allPower_W({ power_W }: HeatNetwork): number {
  let sum = 0;
  for (const power of power_W) sum += power;
  return sum;
}

/** Joules stored above the datum. */
export function stored_J({ capacity_JPerK, rise_K }: March): number {
  let sum = 0;
  for (let i = 0; i < rise_K.length; i++) sum += (capacity_JPerK[i] as number) * (rise_K[i] as number);
  return sum;
}

export const card = defineCard({
  id: 'heatMarch',
  title: 'Temperatures over time, step by step',
  equation: 'θ_1 = (C/Δt·θ_0 + P)/(C/Δt + G); θ = 2·θ_h − θ_w; of two half steps and a whole one',
  result: { name: 'temperature rise of a node at the end of one implicit step', unit: 'K', symbol: 'θ_1' },
  symbols: { capacity_JPerK: 'C', step_s: 'Δt', startRise_K: 'θ_0', inward_W: 'P', outward_WPerK: 'G' },
  source: { key: 'hairerWanner1996', where: 'extrapolated implicit Euler method' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: 0.002, from: 'computed' },
  assumes: ['lumped'],
  example: {
    given: { capacity_JPerK: 0.5, step_s: 0.5, startRise_K: 10, inward_W: 5, outward_WPerK: 0.25 },
    printed: '12',
    kind: 'worked again',
    where: 'worked by hand: (10 + 5)/(1 + 0.25)',
  },
  evaluate: ({ capacity_JPerK, step_s, startRise_K, inward_W, outward_WPerK }) =>
    ((capacity_JPerK / step_s) * startRise_K + inward_W) / (capacity_JPerK / step_s + outward_WPerK),
});
