import type { Fit, LeastSquares } from '../../core/solve/levenbergMarquardt.ts';
import { profileInterval } from '../../core/solve/profileInterval.ts';
import type { SystemInput } from '../../core/system/input.ts';
import type { Computed, FittedReading, FittedValue, Reading, Unknown } from './types.ts';
import { coverage, fittedUnknowns, withinOf } from './unknowns.ts';

/** Standard uncertainties below which 95 % of a normal distribution lie. */
const oneSided = 1.644854;
/** A leak as near to none as this, in standard uncertainties, is bounded by how the readings rise against it, not by a slope. */
const nearNone = 3;

/** A fit, which of its unknowns, and by how much all uncertainties are stretched. */
export interface Fitted {
  readonly problem: LeastSquares;
  readonly fit: Fit;
  readonly i: number;
  readonly birge: number;
}

/**
 * One fitted unknown with its interval of 95 %, by the covariance of all; that of a leak close to none by likelihood, since its
 * air goes with more than the first power of its width. A leak that ended at none has a one-sided limit.
 */
export function fittedValue(input: SystemInput, unknown: Unknown, fitted: Fitted): FittedValue {
  const { fit, i, birge } = fitted;
  const { read, toValue } = fittedUnknowns[unknown];
  const at = fit.parameters[i] as number;
  const sigma = birge * (fit.known.sigma[i] as number);
  const atZero = unknown === 'leak' && at <= 0;
  const isNearNone = unknown === 'leak' && at < nearNone * sigma;
  const [low, high] = isNearNone
    ? byLikelihood(fitted, atZero ? oneSided : coverage)
    : [at - coverage * sigma, at + coverage * sigma];
  const value = toValue(at);
  const widest = Math.max(value - toValue(low), toValue(high) - value);
  return {
    unknown,
    start: toValue(read(input) ?? 0),
    value,
    low: toValue(low),
    high: toValue(high),
    within: isNearNone ? widest : withinOf(unknown, sigma),
    atZero,
    alone: withinOf(unknown, birge * (fit.known.alone[i] as number)),
  };
}

function byLikelihood({ problem, fit, i, birge }: Fitted, times: number): [number, number] {
  const { low, high } = profileInterval(problem, fit, i, (times * birge) ** 2);
  return [low, high];
}

/** Every reading before and after. */
export function fittedReadings(
  readings: readonly Reading[],
  before: readonly Computed[],
  after: readonly Computed[],
  fit: Fit,
  birge: number,
): FittedReading[] {
  return readings.map((reading, row) => {
    const computedBefore = before[row]?.value ?? reading.value;
    const computedAfter = after[row]?.value ?? reading.value;
    const leverage = leverageOf(fit, row);
    const timesAfter = (reading.value - computedAfter) / reading.within;
    return {
      ...reading,
      computedBefore,
      computedAfter,
      timesBefore: (reading.value - computedBefore) / reading.within,
      timesAfter,
      sigmaAfter: (birge * Math.sqrt(leverage) * reading.within) / 2,
      leverage,
      agreementAfter: Math.abs(timesAfter) <= 1 ? 'inside' : 'outside',
    };
  });
}

/** Variance of the computed value over that of its instrument. */
function leverageOf({ jacobian, parameters, known }: Fit, row: number): number {
  const n = parameters.length;
  let sum = 0;
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++)
      sum +=
        (jacobian[row * n + i] as number) *
        (known.covariance[i * n + j] as number) *
        (jacobian[row * n + j] as number);
  return Math.min(1, Math.max(0, sum));
}
