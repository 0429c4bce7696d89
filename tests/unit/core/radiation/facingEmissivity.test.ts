import { describe, expect, test } from 'vitest';
import { facingEmissivity } from '../../../../src/core/radiation/facingEmissivity.ts';

describe('facingEmissivity', () => {
  test('is that of the other where one is black', () => {
    expect(facingEmissivity(1, 0.3)).toBeCloseTo(0.3, 15);
    expect(facingEmissivity(1, 1)).toBe(1);
  });

  test('does not mind which one is which, and is never above the duller one', () => {
    for (const [first, second] of [
      [0.1, 0.9],
      [0.5, 0.6],
      [0.05, 0.05],
    ] as const) {
      expect(facingEmissivity(first, second)).toBe(facingEmissivity(second, first));
      expect(facingEmissivity(first, second)).toBeLessThanOrEqual(Math.min(first, second));
    }
  });

  test('sums what is thrown back and forth between the two', () => {
    const [a, b] = [0.3, 0.7];
    let left = a;
    let taken = 0;
    for (let bounce = 0; bounce < 200; bounce++) {
      taken += left * b;
      left *= (1 - b) * (1 - a);
    }
    expect(facingEmissivity(a, b)).toBeCloseTo(taken, 12);
  });
});
