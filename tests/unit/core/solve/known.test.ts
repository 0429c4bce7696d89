import { describe, expect, test } from 'vitest';
import { knownFrom } from '../../../../src/core/solve/known.ts';

describe('what observations tell', () => {
  test('two that look along one parameter each know both apart', () => {
    const known = knownFrom(Float64Array.of(2, 0, 0, 4), 2, 2);
    expect(Array.from(known.sigma)).toEqual([0.5, 0.25]);
    expect(Array.from(known.alone)).toEqual([0.5, 0.25]);
    expect(known.condition).toBeCloseTo(1, 12);
    expect(known.rank).toBe(2);
    expect(Array.from(known.correlation)).toEqual([1, 0, 0, 1]);
  });

  test('covariance is the inverse of JᵀJ, and what others cost is seen', () => {
    // JᵀJ = [[2, 1], [1, 1]], its inverse [[1, −1], [−1, 2]].
    const known = knownFrom(Float64Array.of(1, 0, 1, 1), 2, 2);
    [1, -1, -1, 2].forEach((value, i) => {
      expect(known.covariance[i]).toBeCloseTo(value, 12);
    });
    expect(known.correlation[1]).toBeCloseTo(-Math.SQRT1_2, 12);
    expect(known.alone[0]).toBeCloseTo(Math.SQRT1_2, 12);
    expect(known.sigma[1]).toBeCloseTo(Math.SQRT2, 12);
  });

  test('units of a parameter change neither rank nor condition', () => {
    const plain = knownFrom(Float64Array.of(1, 0, 1, 1), 2, 2);
    const scaled = knownFrom(Float64Array.of(1, 0, 1, 1e-9), 2, 2);
    expect(scaled.rank).toBe(2);
    expect(scaled.condition).toBeCloseTo(plain.condition, 6);
    expect((scaled.sigma[1] as number) / (plain.sigma[1] as number)).toBeCloseTo(1e9, 0);
  });

  test('a third parameter that two others mix to leaves all three open', () => {
    // Third column: the sum of the other two.
    const known = knownFrom(Float64Array.of(1, 0, 1, 0, 1, 1, 1, 2, 3), 3, 3);
    expect(known.rank).toBe(2);
    expect(known.condition).toBeGreaterThan(1e7);
    for (const sigma of known.sigma) expect(sigma).toBeGreaterThan(1e100);
    const [a = 0, b = 0, c = 0] = known.weakest;
    expect(a / b).toBeCloseTo(1, 6);
    expect(c / a).toBeCloseTo(-1, 6);
  });

  test('of no observation at all nothing is known, and everything is finite', () => {
    const known = knownFrom(new Float64Array(0), 0, 2);
    expect(known.rank).toBe(0);
    for (const value of [...known.covariance, ...known.sigma, ...known.alone, ...known.correlation])
      expect(Number.isFinite(value)).toBe(true);
  });
});
