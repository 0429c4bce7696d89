import { describe, expect, test } from 'vitest';
import { quantile } from '../../../../src/core/solve/quantile.ts';

describe('quantile', () => {
  // Expected numbers: numpy 1.24.2, quantile with its default rule, a second implementation.
  test.each([
    [0.05, 1.25],
    [0.3, 3],
    [0.5, 6],
    [0.9, 24],
  ])('of six doublings at %f is %f', (share, expected) => {
    expect(quantile([1, 2, 4, 8, 16, 32], share)).toBeCloseTo(expected, 13);
  });

  test('has the least and the largest at its ends, and never leaves them', () => {
    expect([0, 1, -3, 7].map((share) => quantile([2, 5, 11], share))).toEqual([2, 11, 2, 11]);
  });

  test('of one value is that value', () => {
    expect(quantile([7], 0.95)).toBe(7);
  });
});
