import { describe, expect, test } from 'vitest';
import { shareInterval } from '../../../../src/core/solve/shareInterval.ts';

describe('shareInterval', () => {
  // Expected numbers: scipy 1.17.1, binomtest(…).proportion_ci(…, 'wilson'), a second implementation.
  test.each([
    [10, 20, 0.9, 0.32740376788515596, 0.672596232114844],
    [20, 20, 0.99, 0.7508945989012464, 1],
    [81, 263, 0.95, 0.2552885198782742, 0.366209576982804],
  ])('%i of %i at %f', (successes, of, confidence, low, high) => {
    const interval = shareInterval(successes, of, confidence);
    expect(interval[0]).toBeCloseTo(low, 12);
    expect(interval[1]).toBeCloseTo(high, 12);
  });

  test('is the same for failures, turned round', () => {
    const [low, high] = shareInterval(3, 40, 0.95);
    const [from, to] = shareInterval(37, 40, 0.95);
    expect(1 - low).toBeCloseTo(to, 14);
    expect(1 - high).toBeCloseTo(from, 14);
  });

  test('of none and of all is not certain', () => {
    expect(shareInterval(0, 1000, 0.95)[0]).toBe(0);
    expect(shareInterval(0, 1000, 0.95)[1]).toBeCloseTo(1.96 ** 2 / (1000 + 1.96 ** 2), 6);
    expect(shareInterval(1000, 1000, 0.95)[1]).toBe(1);
  });

  test('without draws is anything, and without confidence the share itself', () => {
    expect(shareInterval(0, 0, 0.95)).toEqual([0, 1]);
    expect(shareInterval(1, 4, 0)).toEqual([0.25, 0.25]);
  });
});
