import { solveDense } from './denseSolve.ts';
import { type Known, knownFrom } from './known.ts';

/** A sum of squares to be made least. */
export interface LeastSquares {
  /** How many residuals there are; as many as parameters at least for an answer of full rank. */
  readonly count: number;
  /** Each residual over its own standard deviation, into `out`. @returns false where there is no answer at these parameters */
  readonly residuals: (parameters: Float64Array, out: Float64Array) => boolean;
  readonly start: readonly number[];
  /** Bounds of each; an end left open is infinite. The start is taken inside. */
  readonly low?: readonly number[];
  readonly high?: readonly number[];
  /** Step of each parameter for central differences; a relative 6e-6 (cube root of rounding) where left out. */
  readonly differences?: readonly number[];
  /** Derivatives of all residuals instead, count × n, row-major. */
  readonly jacobian?: (parameters: Float64Array, out: Float64Array) => boolean;
  readonly mostIterations?: number;
  /** Change of the parameters, each in units of its own uncertainty or size, that counts as none. */
  readonly tolerance?: number;
}

export type FitEnd =
  /** Nothing moves any more: the next step, or what it would gain, is lost in rounding. */
  | 'settled'
  | 'mostIterations'
  /** Whatever step is tried, the sum does not fall, while the slope says that it should. */
  | 'stuck'
  | 'noAnswer';

export interface Fit {
  readonly end: FitEnd;
  readonly parameters: Float64Array;
  readonly residuals: Float64Array;
  /** Sum of squares. */
  readonly chiSquare: number;
  /** Residuals less parameters. */
  readonly degrees: number;
  readonly jacobian: Float64Array;
  /** By the Jacobian there; residuals of scatter 1. */
  readonly known: Known;
  /** By the Jacobian at the start. */
  readonly knownAtStart: Known;
  /** −1 where a parameter stands at its lower bound and would go on, 1 at its upper one, else 0. */
  readonly bound: readonly (-1 | 0 | 1)[];
  readonly iterations: number;
  readonly evaluations: number;
}

const cubeRootOfRounding = 6e-6;

/**
 * Weighted nonlinear least squares by Levenberg’s and Marquardt’s method: steps of (JᵀJ + μD)·δ = −Jᵀr with D the largest
 * squares of the columns so far, μ by the gain of each step as Nielsen 1999 has it (Madsen, Nielsen & Tingleff, Methods for
 * non-linear least squares problems, 2004). Bounds by projection: what stands at one and would go on is held.
 */
export function levenbergMarquardt(problem: LeastSquares): Fit {
  const { count, start } = problem;
  const n = start.length;
  const state = begin(problem);
  let evaluations = 1;
  if (!problem.residuals(state.at, state.r)) return ended(state, 'noAnswer', 0, evaluations);
  state.sum = squares(state.r);
  let damping = 1e-3;
  let growth = 2;
  let isFresh = false;
  const most = problem.mostIterations ?? 100;
  for (let iteration = 1; iteration <= most; iteration++) {
    if (!isFresh) {
      const used = differentiate(problem, state);
      evaluations += used;
      if (used < 0) return ended(state, 'noAnswer', iteration, evaluations + 2 * n);
      isFresh = true;
      if (iteration === 1) state.first.set(state.jacobian);
    }
    const step = stepOf(state, count, damping);
    if (step === null || isTiny(state, step, problem.tolerance ?? 1e-9))
      return ended(state, 'settled', iteration, evaluations);
    for (let i = 0; i < n; i++)
      state.trial[i] = held(state, i, (state.at[i] as number) + (step[i] as number));
    const foretold = gainOf(state, count);
    const answered = problem.residuals(state.trial, state.trialR);
    evaluations++;
    const sum = answered ? squares(state.trialR) : Number.POSITIVE_INFINITY;
    const gain = (state.sum - sum) / Math.max(foretold, 1e-300);
    if (sum < state.sum) {
      const isLast = foretold < 1e-15 * state.sum;
      state.at.set(state.trial);
      state.r.set(state.trialR);
      state.sum = sum;
      isFresh = false;
      damping = Math.max(1e-15, damping * Math.max(1 / 3, 1 - (2 * gain - 1) ** 3));
      growth = 2;
      if (isLast && differentiate(problem, state) >= 0)
        return ended(state, 'settled', iteration, evaluations);
    } else {
      if (foretold < 1e-13 * state.sum) return ended(state, 'settled', iteration, evaluations);
      damping *= growth;
      growth *= 2;
      if (damping > 1e12) return ended(state, 'stuck', iteration, evaluations);
    }
  }
  return ended(state, 'mostIterations', most, evaluations);
}

interface State {
  readonly at: Float64Array;
  readonly trial: Float64Array;
  readonly low: Float64Array;
  readonly high: Float64Array;
  readonly r: Float64Array;
  readonly trialR: Float64Array;
  readonly jacobian: Float64Array;
  readonly first: Float64Array;
  /** Largest squares of the columns so far. */
  readonly largest: Float64Array;
  sum: number;
}

function begin({ count, start, low, high }: LeastSquares): State {
  const n = start.length;
  const state: State = {
    at: Float64Array.from(start),
    trial: new Float64Array(n),
    low: Float64Array.from(start, (_, i) => low?.[i] ?? Number.NEGATIVE_INFINITY),
    high: Float64Array.from(start, (_, i) => high?.[i] ?? Number.POSITIVE_INFINITY),
    r: new Float64Array(count),
    trialR: new Float64Array(count),
    jacobian: new Float64Array(count * n),
    first: new Float64Array(count * n),
    largest: new Float64Array(n),
    sum: 0,
  };
  for (let i = 0; i < n; i++) state.at[i] = held(state, i, state.at[i] as number);
  return state;
}

function held({ low, high }: State, i: number, value: number): number {
  return Math.min(high[i] as number, Math.max(low[i] as number, value));
}

function squares(values: Float64Array): number {
  return values.reduce((sum, value) => sum + value * value, 0);
}

/** Jacobian at `state.at`. @returns evaluations spent, −1 where a neighbour has no answer */
function differentiate(problem: LeastSquares, state: State): number {
  const { at, jacobian, largest } = state;
  const n = at.length;
  let used = 0;
  if (problem.jacobian) {
    if (!problem.jacobian(at, jacobian)) return -1;
  } else {
    for (let i = 0; i < n; i++) {
      if (!differ(problem, state, i)) return -1;
      used += 2;
    }
  }
  for (let i = 0; i < n; i++) {
    let sum = 0;
    for (let r = 0; r < problem.count; r++) sum += (jacobian[r * n + i] as number) ** 2;
    largest[i] = Math.max(largest[i] as number, sum);
  }
  return used;
}

/** One column, by central differences; to one side of a bound, or of what has no answer, with the value here. */
function differ({ count, residuals, differences }: LeastSquares, state: State, i: number): boolean {
  const { at, jacobian, r: present } = state;
  const n = at.length;
  const here = at[i] as number;
  const step = differences?.[i] ?? cubeRootOfRounding * Math.max(Math.abs(here), 1e-8);
  const beside = at.slice();
  const look = (to: number) => {
    const values = new Float64Array(count);
    beside[i] = held(state, i, to);
    const isThere = beside[i] !== here && residuals(beside, values);
    return isThere ? { at: beside[i] as number, values } : { at: here, values: present };
  };
  const above = look(here + step);
  const below = look(here - step);
  const width = above.at - below.at;
  for (let r = 0; r < count; r++)
    jacobian[r * n + i] = width > 0 ? ((above.values[r] as number) - (below.values[r] as number)) / width : 0;
  return width > 0 || state.low[i] === state.high[i];
}

/** Slope of half the sum by each parameter. */
function slopes({ jacobian, r, at }: State): Float64Array {
  const n = at.length;
  const slope = new Float64Array(n);
  for (let row = 0; row < r.length; row++)
    for (let i = 0; i < n; i++)
      slope[i] = (slope[i] as number) + (jacobian[row * n + i] as number) * (r[row] as number);
  return slope;
}

function boundAt({ at, low, high }: State, i: number, slope: number): -1 | 0 | 1 {
  if ((at[i] as number) <= (low[i] as number) && slope > 0) return -1;
  return (at[i] as number) >= (high[i] as number) && slope < 0 ? 1 : 0;
}

/** @returns `null` where there is no way down at all */
function stepOf(state: State, count: number, damping: number): Float64Array | null {
  const { jacobian, at, largest } = state;
  const n = at.length;
  const slope = slopes(state);
  const isFree = Array.from(slope, (each, i) => boundAt(state, i, each) === 0 && (largest[i] as number) > 0);
  const matrix = new Float64Array(n * n);
  const step = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    if (!isFree[i]) {
      matrix[i * n + i] = 1;
      continue;
    }
    const scale = Math.sqrt(largest[i] as number);
    step[i] = -(slope[i] as number) / scale;
    for (let j = 0; j < n; j++) {
      if (!isFree[j]) continue;
      let sum = 0;
      for (let r = 0; r < count; r++)
        sum += (jacobian[r * n + i] as number) * (jacobian[r * n + j] as number);
      matrix[i * n + j] = sum / (scale * Math.sqrt(largest[j] as number));
    }
    matrix[i * n + i] = (matrix[i * n + i] as number) + damping;
  }
  if (!isFree.includes(true) || !step.some((each) => each !== 0)) return null;
  if (!solveDense(matrix, step, n)) return null;
  return step.map((each, i) => (isFree[i] ? each / Math.sqrt(largest[i] as number) : 0));
}

/** Each change beside the parameter’s size, or beside how far its own residuals let it move. */
function isTiny({ at, largest }: State, step: Float64Array, tolerance: number): boolean {
  return step.every((each, i) => {
    const told = (largest[i] as number) > 0 ? 1 / Math.sqrt(largest[i] as number) : 0;
    return Math.abs(each) <= tolerance * Math.max(Math.abs(at[i] as number), 1e-3 * told);
  });
}

/** By how much the sum would fall on the way to `trial` if the residuals were straight. */
function gainOf({ jacobian, r, at, trial }: State, count: number): number {
  const n = at.length;
  let sum = 0;
  for (let row = 0; row < count; row++) {
    let moved = r[row] as number;
    for (let i = 0; i < n; i++)
      moved += (jacobian[row * n + i] as number) * ((trial[i] as number) - (at[i] as number));
    sum += (r[row] as number) ** 2 - moved * moved;
  }
  return sum;
}

function ended(state: State, end: FitEnd, iterations: number, evaluations: number): Fit {
  const { at, r, jacobian, first, sum } = state;
  const n = at.length;
  const slope = slopes(state);
  return {
    end,
    parameters: at,
    residuals: r,
    chiSquare: sum,
    degrees: r.length - n,
    jacobian,
    known: knownFrom(jacobian, r.length, n),
    knownAtStart: knownFrom(first, r.length, n),
    bound: Array.from(slope, (each, i) => boundAt(state, i, each)),
    iterations,
    evaluations,
  };
}
