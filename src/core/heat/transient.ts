import { defineCard } from '../card.ts';
import { symmetricEigen } from '../solve/symmetricEigen.ts';

export interface TransientNetwork {
  readonly n: number;
  /** Of each node; above zero. */
  readonly capacity_JPerK: Float64Array;
  /** Between nodes: n × n, row-major, symmetric, none negative; the diagonal is not read. */
  readonly conductance_WPerK: Float64Array;
  /** Of each node to its own fixed temperature; 0 where it has none. */
  readonly toFixed_WPerK: Float64Array;
}

/** A network taken apart into modes that warm and cool independently of one another. */
export interface TransientModes {
  readonly n: number;
  /** Reciprocal time constants, none negative. */
  readonly rate_PerS: Float64Array;
  /** Modes in columns, row-major, in the coordinates √C·T. */
  readonly vectors: Float64Array;
  readonly rootCapacity: Float64Array;
  readonly toFixed_WPerK: Float64Array;
}

/**
 * Takes a linear heat network apart: the eigenvalues of C^−½·G·C^−½ are the rates at which its modes settle.
 * Done once for a network; every response after that is exact at any time, without steps.
 */
export function prepareTransient(network: TransientNetwork): TransientModes {
  const { n, capacity_JPerK, conductance_WPerK, toFixed_WPerK } = network;
  const rootCapacity = capacity_JPerK.map(Math.sqrt);
  const matrix = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    const root_i = rootCapacity[i] as number;
    let leaving = toFixed_WPerK[i] as number;
    for (let j = 0; j < n; j++) {
      if (j === i) continue;
      const g = conductance_WPerK[i * n + j] as number;
      leaving += g;
      matrix[i * n + j] = -g / (root_i * (rootCapacity[j] as number));
    }
    matrix[i * n + i] = leaving / (root_i * root_i);
  }
  const { values, vectors } = symmetricEigen(matrix, n);
  // A network without any way out has one rate of exactly zero; rounding may put it a hair below.
  const rate_PerS = values.map((value) => Math.max(0, value));
  return { n, rate_PerS, vectors, rootCapacity, toFixed_WPerK: toFixed_WPerK.slice() };
}

/**
 * Temperatures after `time_s` of constant powers and constant fixed temperatures, exact. Steps, duty and a stopped fan
 * are several of these in turn, each from the temperatures of the one before; `out_K` may be the same array as `T0_K`.
 * A node tied to several fixed temperatures takes the sum of their conductances and their weighted mean.
 * @returns `out_K`
 */
export function respond(
  modes: TransientModes,
  T0_K: Float64Array,
  power_W: Float64Array,
  fixed_K: Float64Array,
  time_s: number,
  out_K: Float64Array,
): Float64Array {
  const { n, rate_PerS, vectors, rootCapacity, toFixed_WPerK } = modes;
  const amplitude = new Float64Array(n);
  for (let k = 0; k < n; k++) {
    let start = 0;
    let drive = 0;
    for (let i = 0; i < n; i++) {
      const root = rootCapacity[i] as number;
      const shape = vectors[i * n + k] as number;
      const source_W = (power_W[i] as number) + (toFixed_WPerK[i] as number) * (fixed_K[i] as number);
      start += shape * root * (T0_K[i] as number);
      drive += (shape * source_W) / root;
    }
    const x = (rate_PerS[k] as number) * time_s;
    amplitude[k] = start * Math.exp(-x) + drive * time_s * meanDecay(x);
  }
  for (let i = 0; i < n; i++) {
    let sum = 0;
    for (let k = 0; k < n; k++) sum += (vectors[i * n + k] as number) * (amplitude[k] as number);
    out_K[i] = sum / (rootCapacity[i] as number);
  }
  return out_K;
}

/** (1 − e^−x)/x, which is 1 at 0. */
function meanDecay(x: number): number {
  return x < 1e-12 ? 1 : -Math.expm1(-x) / x;
}

interface Chain {
  readonly power_W: number;
  readonly R1_KPerW: number;
  readonly C1_JPerK: number;
  readonly R2_KPerW: number;
  readonly C2_JPerK: number;
  readonly time_s: number;
}

/** Rise of the first node of source → R₁ → R₂ → fixed temperature, from equilibrium. */
function chainRise_K(chain: Chain): number {
  const between = 1 / chain.R1_KPerW;
  const modes = prepareTransient({
    n: 2,
    capacity_JPerK: Float64Array.of(chain.C1_JPerK, chain.C2_JPerK),
    conductance_WPerK: Float64Array.of(0, between, between, 0),
    toFixed_WPerK: Float64Array.of(0, 1 / chain.R2_KPerW),
  });
  const T_K = new Float64Array(2);
  respond(modes, T_K, Float64Array.of(chain.power_W, 0), new Float64Array(2), chain.time_s, T_K);
  return T_K[0] as number;
}

export const card = defineCard({
  id: 'transient',
  title: 'Warm-up and cool-down of a heat network',
  equation:
    'C_1·dT_1/dt = P − (T_1 − T_2)/R_1; C_2·dT_2/dt = (T_1 − T_2)/R_1 − T_2/R_2; T = T_1(t); by the modes of the network',
  result: { name: 'temperature rise of the first of two nodes in the example', unit: 'K', symbol: 'T' },
  symbols: { power_W: 'P', R1_KPerW: 'R_1', C1_JPerK: 'C_1', R2_KPerW: 'R_2', C2_JPerK: 'C_2', time_s: 't' },
  source: { key: 'ownComputation', where: 'linear equations with constant coefficients' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: null, from: 'not stated' },
  assumes: ['lumped', 'steadyProperties'],
  example: {
    given: { power_W: 5, R1_KPerW: 5, C1_JPerK: 0.5, R2_KPerW: 3, C2_JPerK: 40, time_s: 60 },
    printed: '30.4584',
    kind: 'computed elsewhere',
    where: 'chip on a sink after a minute, separate program',
  },
  evaluate: chainRise_K,
});
