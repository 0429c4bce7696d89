import { describe, expect, test } from 'vitest';
import { type LeastSquares, levenbergMarquardt } from '../../../../src/core/solve/levenbergMarquardt.ts';
import { profileInterval } from '../../../../src/core/solve/profileInterval.ts';

const xs = [0, 1, 2, 3, 4, 5];
const line: LeastSquares = {
  count: xs.length,
  start: [0, 1],
  residuals: (p, out) => {
    xs.forEach((x, i) => {
      out[i] = ((p[0] as number) + (p[1] as number) * x - 2 * x) / 0.2;
    });
    return true;
  },
};
/** One observation of a square, 0.04 ± 0.05. */
const square: LeastSquares = {
  count: 1,
  start: [0.3],
  low: [0],
  high: [10],
  residuals: (p, out) => {
    out[0] = ((p[0] as number) ** 2 - 0.04) / 0.05;
    return true;
  },
};

describe('an interval by likelihood', () => {
  test('of a straight line is that of its covariance', () => {
    const fit = levenbergMarquardt(line);
    for (const i of [0, 1]) {
      const half = 1.96 * (fit.known.sigma[i] as number);
      const { low, high } = profileInterval(line, fit, i, 1.96 ** 2);
      expect((high - (fit.parameters[i] as number)) / half).toBeCloseTo(1, 2);
      expect(((fit.parameters[i] as number) - low) / half).toBeCloseTo(1, 2);
    }
  });

  test('of a bent one ends where the observation says, and at a bound that nothing speaks against', () => {
    const fit = levenbergMarquardt(square);
    expect(fit.parameters[0]).toBeCloseTo(0.2, 5);
    const { low, high } = profileInterval(square, fit, 0, 1.96 ** 2);
    expect(low).toBe(0);
    expect(high).toBeCloseTo(Math.sqrt(0.04 + 1.96 * 0.05), 3);
    // Its covariance would have it end at 0.445.
    expect(0.2 + 1.96 * (fit.known.sigma[0] as number)).toBeCloseTo(0.445, 3);
  });

  test('ends where there is no answer any more', () => {
    const cut = {
      ...square,
      residuals: (p: Float64Array, out: Float64Array) => (p[0] as number) < 0.3 && square.residuals(p, out),
      start: [0.21],
    };
    const { high } = profileInterval(cut, levenbergMarquardt(cut), 0, 1.96 ** 2);
    expect(high).toBeCloseTo(0.3, 3);
  });
});
