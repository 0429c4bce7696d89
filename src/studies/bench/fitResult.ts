import type { Fit } from '../../core/solve/levenbergMarquardt.ts';
import type { SystemInput } from '../../core/system/input.ts';
import type { Computed, FittedReading, FittedValue, Reading, Unknown } from './types.ts';
import { coverage, fittedUnknowns, withinOf } from './unknowns.ts';

/** Standard uncertainties below which 95 % of a normal distribution lie. */
const oneSided = 1.644854;

/**
 * One fitted unknown with its interval, by the covariance of all. A leak that ended at none has a one-sided limit, to first
 * order. @param birge times all uncertainties
 */
export function fittedValue(
  input: SystemInput,
  unknown: Unknown,
  fit: Fit,
  i: number,
  birge: number,
): FittedValue {
  const { read, toValue, low } = fittedUnknowns[unknown];
  const at = fit.parameters[i] as number;
  const sigma = birge * (fit.known.sigma[i] as number);
  const atZero = unknown === 'leak' && at <= 0;
  const high = toValue(at + (atZero ? oneSided : coverage) * sigma);
  return {
    unknown,
    start: toValue(read(input) ?? 0),
    value: toValue(at),
    low: toValue(Math.max(low, at - coverage * sigma)),
    high,
    within: atZero ? high : withinOf(unknown, sigma),
    atZero,
    alone: withinOf(unknown, birge * (fit.known.alone[i] as number)),
  };
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
