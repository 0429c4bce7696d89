import { describe, expect, test } from 'vitest';
import { symmetricEigen } from '../../../../src/core/solve/symmetricEigen.ts';

const sorted = (values: Float64Array) => [...values].sort((a, b) => a - b);

describe('symmetricEigen', () => {
  test('of a chain has the values of the closed form 2 − 2cos(kπ/(n+1))', () => {
    const n = 12;
    const matrix = new Float64Array(n * n);
    for (let i = 0; i < n; i++) {
      matrix[i * n + i] = 2;
      if (i > 0) {
        matrix[i * n + i - 1] = -1;
        matrix[(i - 1) * n + i] = -1;
      }
    }
    sorted(symmetricEigen(matrix, n).values).forEach((value, i) => {
      expect(value).toBeCloseTo(2 - 2 * Math.cos(((i + 1) * Math.PI) / (n + 1)), 13);
    });
  });

  test('keeps small values accurate beside large ones', () => {
    // Determinant 1e12 − 1, trace 1e12 + 1: the small value is 1 − 1e-12 to many digits.
    const values = sorted(symmetricEigen(Float64Array.of(1e12, 1, 1, 1), 2).values);
    expect(Math.abs((values[0] as number) - (1 - 1e-12))).toBeLessThan(1e-14);
    expect(values[1]).toBeCloseTo(1e12, 3);
  });

  test('leaves its matrix alone', () => {
    const matrix = Float64Array.of(2, 1, 1, 3);
    symmetricEigen(matrix, 2);
    expect([...matrix]).toEqual([2, 1, 1, 3]);
  });

  test('of a diagonal is the diagonal, also with equal values and nothing', () => {
    const { values, vectors } = symmetricEigen(Float64Array.of(5, 0, 0, 0, 5, 0, 0, 0, 0), 3);
    expect([...values]).toEqual([5, 5, 0]);
    expect([...vectors]).toEqual([1, 0, 0, 0, 1, 0, 0, 0, 1]);
  });
});
