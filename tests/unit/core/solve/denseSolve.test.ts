import { describe, expect, test } from 'vitest';
import { solveDense } from '../../../../src/core/solve/denseSolve.ts';

describe('solveDense', () => {
  test('solves a system worked by hand', () => {
    const rhs = Float64Array.of(8, -11, -3);
    expect(solveDense(Float64Array.of(2, 1, -1, -3, -1, 2, -2, 1, 2), rhs, 3)).toBe(true);
    [2, 3, -1].forEach((x, i) => {
      expect(rhs[i]).toBeCloseTo(x, 13);
    });
  });

  test('exchanges rows where the diagonal is nil or tiny', () => {
    const nil = Float64Array.of(3, 7);
    expect(solveDense(Float64Array.of(0, 1, 1, 0), nil, 2)).toBe(true);
    expect([...nil]).toEqual([7, 3]);
    const tiny = Float64Array.of(1, 2);
    expect(solveDense(Float64Array.of(1e-20, 1, 1, 1), tiny, 2)).toBe(true);
    expect(tiny[0]).toBeCloseTo(1, 14);
    expect(tiny[1]).toBeCloseTo(1, 14);
  });

  test('stays accurate in the six-row Hilbert matrix', () => {
    const n = 6;
    const matrix = Float64Array.from({ length: n * n }, (_, i) => 1 / (Math.floor(i / n) + (i % n) + 1));
    const rhs = Float64Array.from({ length: n }, (_, i) =>
      matrix.subarray(i * n, i * n + n).reduce((sum, value) => sum + value, 0),
    );
    expect(solveDense(matrix, rhs, n)).toBe(true);
    // Its condition number is 1.5e7.
    for (const x of rhs) expect(Math.abs(x - 1)).toBeLessThan(1e-8);
  });

  test.each([
    ['two equal rows', [1, 2, 1, 2]],
    ['a row of nothing', [1, 2, 0, 0]],
    ['a value that is no number', [Number.NaN, 1, Number.NaN, 2]],
  ])('says no to %s', (_, matrix) => {
    expect(solveDense(Float64Array.from(matrix), Float64Array.of(1, 1), 2)).toBe(false);
  });
});
