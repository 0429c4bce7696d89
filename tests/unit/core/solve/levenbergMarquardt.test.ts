import { describe, expect, test } from 'vitest';
import { type LeastSquares, levenbergMarquardt } from '../../../../src/core/solve/levenbergMarquardt.ts';

const xs = [0, 1, 2, 3, 4, 5];
const ys = [1.1, 2.9, 5.2, 6.8, 9.1, 11.2];

/** A straight line through points, each of scatter 0.2. */
const line: LeastSquares = {
  count: xs.length,
  start: [0, 0],
  residuals: (p, out) => {
    xs.forEach((x, i) => {
      out[i] = ((p[0] as number) + (p[1] as number) * x - (ys[i] as number)) / 0.2;
    });
    return true;
  },
};

describe('least squares', () => {
  test('a straight line has the parameters and deviations of the normal equations', () => {
    const fit = levenbergMarquardt(line);
    const mean = 2.5;
    const spread = 17.5;
    const slope = xs.reduce((sum, x, i) => sum + (x - mean) * (ys[i] as number), 0) / spread;
    const middle = ys.reduce((sum, y) => sum + y, 0) / 6;
    expect(fit.end).toBe('settled');
    expect(fit.parameters[1]).toBeCloseTo(slope, 8);
    expect(fit.parameters[0]).toBeCloseTo(middle - slope * mean, 8);
    expect(fit.known.sigma[1]).toBeCloseTo(0.2 / Math.sqrt(spread), 8);
    expect(fit.known.sigma[0]).toBeCloseTo(0.2 * Math.sqrt(1 / 6 + mean ** 2 / spread), 8);
    expect(fit.degrees).toBe(4);
    expect(fit.known.rank).toBe(2);
  });

  test('derivatives that are given lead to the same as differences', () => {
    const given = levenbergMarquardt({
      ...line,
      jacobian: (_, out) => {
        xs.forEach((x, i) => {
          out[2 * i] = 5;
          out[2 * i + 1] = 5 * x;
        });
        return true;
      },
    });
    const found = levenbergMarquardt(line);
    given.parameters.forEach((value, i) => {
      expect(value).toBeCloseTo(found.parameters[i] as number, 8);
    });
    expect(given.evaluations).toBeLessThan(found.evaluations);
  });

  test('a bound in the way is stood at, and told with its side', () => {
    const fit = levenbergMarquardt({ ...line, low: [0, 0], high: [10, 1.5] });
    expect(fit.parameters[1]).toBe(1.5);
    expect(fit.bound).toEqual([0, 1]);
    // The mean of what is left over, for the slope is held.
    const middle = ys.reduce((sum, y) => sum + y, 0) / 6;
    expect(fit.parameters[0]).toBeCloseTo(middle - 1.5 * 2.5, 6);
  });

  test('a start outside is taken inside, one at a bound may leave it', () => {
    expect(levenbergMarquardt({ ...line, start: [-5, 40], high: [10, 3] }).parameters[1]).toBeCloseTo(
      2.01,
      1,
    );
    expect(levenbergMarquardt({ ...line, low: [0, 0] }).bound).toEqual([0, 0]);
  });

  test('two parameters that do the same are told as one, with the way between them', () => {
    const fit = levenbergMarquardt({
      count: 4,
      start: [0.1, 0.1],
      residuals: (p, out) => {
        out.fill((p[0] as number) + 2 * (p[1] as number) - 3);
        return true;
      },
    });
    expect(fit.known.rank).toBe(1);
    expect((fit.known.weakest[0] as number) / (fit.known.weakest[1] as number)).toBeCloseTo(-2, 6);
    expect(fit.known.alikeness[1]).toBeCloseTo(1, 8);
    expect(fit.chiSquare).toBeLessThan(1e-10);
  });

  test('a parameter that moves nothing has no rank and an uncertainty without end, but finite', () => {
    const fit = levenbergMarquardt({
      count: 3,
      start: [1, 1],
      residuals: (p, out) => {
        out.fill((p[0] as number) - 2);
        return true;
      },
    });
    expect(fit.known.rank).toBe(1);
    expect(fit.known.sigma[1]).toBeGreaterThan(1e100);
    expect(Number.isFinite(fit.known.sigma[1])).toBe(true);
    expect(Array.from(fit.known.weakest)).toEqual([0, 1]);
    expect(fit.parameters[0]).toBeCloseTo(2, 6);
  });

  test('without an answer at the start, or beside it, it says so', () => {
    expect(levenbergMarquardt({ ...line, residuals: () => false }).end).toBe('noAnswer');
    const edge = levenbergMarquardt({
      ...line,
      residuals: (p, out) => p[0] === 0 && line.residuals(p, out),
    });
    expect(edge.end).toBe('noAnswer');
  });

  test('what has no answer farther on is gone round with shorter steps', () => {
    const fit = levenbergMarquardt({
      ...line,
      residuals: (p, out) => (p[1] as number) < 2.03 && line.residuals(p, out),
    });
    expect(fit.end).toBe('settled');
    expect(fit.parameters[1]).toBeCloseTo(2.02, 6);
  });

  test('too few steps are no answer', () => {
    const valley: LeastSquares = {
      count: 2,
      start: [-1.2, 1],
      residuals: (p, out) => {
        out[0] = 10 * ((p[1] as number) - (p[0] as number) ** 2);
        out[1] = 1 - (p[0] as number);
        return true;
      },
    };
    expect(levenbergMarquardt({ ...valley, mostIterations: 3 }).end).toBe('mostIterations');
    const found = levenbergMarquardt(valley);
    expect(found.parameters[0]).toBeCloseTo(1, 6);
    expect(found.parameters[1]).toBeCloseTo(1, 6);
  });
});
