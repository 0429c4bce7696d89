import { describe, expect, test } from 'vitest';
import { moistFactor } from '../../../../src/core/air/moistFactor.ts';

describe('moistFactor', () => {
  test('dry air is dry air', () => expect(moistFactor(300, 101325, 0)).toBe(1));

  test('damp air is lighter, in proportion to its humidity', () => {
    const half = 1 - moistFactor(300, 101325, 0.5);
    expect(half).toBeGreaterThan(0);
    expect(1 - moistFactor(300, 101325, 1)).toBeCloseTo(2 * half, 12);
  });

  test('saturated air near boiling stays a mixture: vapour takes at most half of the pressure', () => {
    // R_d/R_v = 287.053/461.495
    expect(moistFactor(390, 5e4, 1)).toBeCloseTo(1 - 0.5 * (1 - 287.053 / 461.495), 12);
  });
});
