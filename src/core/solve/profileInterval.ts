import { brentRoot } from './brentRoot.ts';
import { type Fit, type LeastSquares, levenbergMarquardt } from './levenbergMarquardt.ts';

/** Where one parameter may lie, with all others fitted anew at each of its values. */
export interface ProfileInterval {
  /** At the bounds of the parameter where the sum never rises so far. */
  readonly low: number;
  readonly high: number;
  readonly evaluations: number;
}

/** As good as never: beside the best fit there is no answer at all. */
const never = 1e9;
const mostDoublings = 40;

/**
 * Interval of one parameter by the rise of the sum of squares above its least (likelihood ratio; Wilks 1938): true also where
 * residuals bend so much, or a bound lies so near, that the covariance says little.
 * @param i which parameter
 * @param rise of the sum at the ends, e.g. 1.96² for 95 %
 */
export function profileInterval(problem: LeastSquares, fit: Fit, i: number, rise: number): ProfileInterval {
  const here = fit.parameters[i] as number;
  const low = problem.low?.[i] ?? Number.NEGATIVE_INFINITY;
  const high = problem.high?.[i] ?? Number.POSITIVE_INFINITY;
  const step = firstStep(fit, i, rise, high - low);
  let evaluations = 0;
  const above = (value: number) => {
    const held = levenbergMarquardt(heldAt(problem, fit, i, value));
    evaluations += held.evaluations;
    const sum = held.end === 'noAnswer' ? never : held.chiSquare - fit.chiSquare;
    return Math.min(never, sum) - rise;
  };
  const end = (way: 1 | -1, bound: number): number => {
    let inside = here;
    for (let doubling = 0; doubling < mostDoublings; doubling++) {
      const ahead = here + way * step * 2 ** doubling;
      const beyond = way > 0 ? Math.min(bound, ahead) : Math.max(bound, ahead);
      if (beyond === inside) return bound;
      if (above(beyond) >= 0) {
        const found = brentRoot(above, inside, beyond, 1e-3 * step);
        return found.ok ? found.root : beyond;
      }
      if (beyond === bound) return bound;
      inside = beyond;
    }
    return inside;
  };
  return { low: end(-1, low), high: end(1, high), evaluations };
}

function firstStep({ known, parameters }: Fit, i: number, rise: number, width: number): number {
  const straight = Math.sqrt(rise) * (known.sigma[i] as number);
  const widest = Number.isFinite(width) ? width / 4 : Math.max(1, Math.abs(parameters[i] as number));
  return Math.max(1e-12, Math.min(straight, widest));
}

function heldAt(problem: LeastSquares, { parameters }: Fit, i: number, value: number): LeastSquares {
  const n = parameters.length;
  const hold = (bounds: readonly number[] | undefined, open: number) =>
    Array.from({ length: n }, (_, k) => (k === i ? value : (bounds?.[k] ?? open)));
  return {
    ...problem,
    start: Array.from(parameters, (each, k) => (k === i ? value : each)),
    low: hold(problem.low, Number.NEGATIVE_INFINITY),
    high: hold(problem.high, Number.POSITIVE_INFINITY),
  };
}
