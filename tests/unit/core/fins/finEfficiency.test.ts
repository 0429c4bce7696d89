import { describe, expect, test } from 'vitest';
import { finEfficiency } from '../../../../src/core/fins/finEfficiency.ts';

describe('finEfficiency', () => {
  test('is whole without heat transfer and without height', () => {
    expect(finEfficiency(0, 200, 1e-3, 0.02)).toBe(1);
    expect(finEfficiency(30, 200, 1e-3, 0)).toBe(1);
  });

  test('of a very long fin is 1/(mH)', () => {
    const m = Math.sqrt((2 * 100) / (15 * 1e-3));
    expect(finEfficiency(100, 15, 1e-3, 1) * m).toBeCloseTo(1, 14);
  });

  test('joins its limit smoothly', () => {
    const k = 2e9; // makes m·H pass 1e-6 at a height of 1.8 mm
    for (const height_m of [1.7e-3, 1.9e-3]) expect(finEfficiency(30, k, 1e-3, height_m)).toBeCloseTo(1, 11);
  });
});
