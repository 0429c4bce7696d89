import { describe, expect, test } from 'vitest';
import { rankCorrelation } from '../../../../src/core/solve/rankCorrelation.ts';

describe('rankCorrelation', () => {
  // Expected numbers: scipy 1.17.1, spearmanr, a second implementation.
  test.each([
    [[1, 2, 2, 3, 5], [2, 1, 4, 4, 9], 0.7631578947368421],
    [[3, 3, 3, 1, 2, 2], [1, 5, 2, 2, 8, 8], -0.38138503569823695],
    [[1, 1, 2, 2], [1, 2, 1, 2], 0],
  ])('of %j and %j is %f', (a, b, expected) => {
    expect(rankCorrelation(a, b)).toBeCloseTo(expected, 14);
    expect(rankCorrelation(b, a)).toBeCloseTo(expected, 14);
  });

  test('minds the order alone', () => {
    const x = Float64Array.from({ length: 50 }, (_, i) => Math.sin(9 * i));
    expect(rankCorrelation(x, x.map(Math.exp))).toBe(1);
    expect(
      rankCorrelation(
        x,
        x.map((value) => -(value ** 3)),
      ),
    ).toBe(-1);
  });

  test('is 0 where there is nothing to order', () => {
    expect([rankCorrelation([], []), rankCorrelation([1], [2]), rankCorrelation([1, 2], [3, 3])]).toEqual([
      0, 0, 0,
    ]);
  });
});
