import { describe, expect, test } from 'vitest';
import { lumpedRise_K } from '../../../../src/core/heat/lumpedRise_K.ts';

describe('lumpedRise_K', () => {
  test('starts at the rate of power over capacity', () => {
    const C_JPerK = 120 / 3;
    expect(lumpedRise_K(10, 3, 120, 1e-6)).toBeCloseTo((10 / C_JPerK) * 1e-6, 12);
  });

  test('ends at power times resistance', () => {
    expect(lumpedRise_K(10, 3, 120, 1e5)).toBe(30);
  });

  test('is nothing at time zero', () => {
    expect(lumpedRise_K(10, 3, 120, 0)).toBeCloseTo(0, 12);
  });
});
