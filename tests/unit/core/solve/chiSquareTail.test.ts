import { describe, expect, test } from 'vitest';
import { chiSquareTail } from '../../../../src/core/solve/chiSquareTail.ts';
import { normalCdf } from '../../../../src/core/solve/normal.ts';

describe('chance of a sum of squares', () => {
  test('of one number is that of a normal one beyond either end', () => {
    for (const z of [0.1, 1, 1.959964, 3, 6])
      expect(chiSquareTail(z * z, 1) / (2 * normalCdf(-z))).toBeCloseTo(1, 10);
  });

  test('of two is an exponential', () => {
    for (const x of [0.01, 1, 5, 40]) expect(chiSquareTail(x, 2) / Math.exp(-x / 2)).toBeCloseTo(1, 11);
  });

  test('of any even number is a sum of Poisson’s terms', () => {
    // Q(3, 4) = e⁻⁴·(1 + 4 + 8)
    expect(chiSquareTail(8, 6)).toBeCloseTo(13 * Math.exp(-4), 12);
  });

  test('falls from one to nothing, over series and fraction alike', () => {
    let before = 1;
    for (let x = 0; x < 400; x += 0.5) {
      const chance = chiSquareTail(x, 37);
      expect(chance).toBeLessThanOrEqual(before);
      expect(chance).toBeGreaterThanOrEqual(0);
      before = chance;
    }
    expect(chiSquareTail(-1, 3)).toBe(1);
    expect(chiSquareTail(1e6, 3)).toBe(0);
  });
});
