import { describe, expect, test } from 'vitest';
import { finEfficiency } from '../../../../src/core/fins/finEfficiency.ts';

describe('finEfficiency', () => {
  test('is one for a fin without cooling or without height', () => {
    expect(finEfficiency(0, 200, 1e-3, 0.02)).toBe(1);
    expect(finEfficiency(30, 200, 1e-3, 0)).toBe(1);
  });

  test('follows 1 − (mH)²/3 for short fins', () => {
    const mH2 = (0.002 ** 2 * 2 * 30) / (200 * 1e-3);
    expect(finEfficiency(30, 200, 1e-3, 0.002)).toBeCloseTo(1 - mH2 / 3, 6);
  });

  test('has no step where it becomes one', () => {
    // 200 W/mK and 1 mm: mH is 1e-6 at a height of 58 nm, and (mH)²/3 is all that may be missing.
    for (const height_m of [57e-9, 59e-9, 2e-6]) {
      const mH = height_m * Math.sqrt(300);
      expect(Math.abs(finEfficiency(30, 200, 1e-3, height_m) - (1 - mH ** 2 / 3))).toBeLessThan(1e-12);
    }
  });

  test('falls as one over mH for endless ones', () => {
    expect(finEfficiency(30, 200, 1e-3, 10)).toBeCloseTo(1 / (10 * Math.sqrt(300)), 12);
  });
});
