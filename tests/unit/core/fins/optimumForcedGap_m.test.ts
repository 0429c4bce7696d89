import { describe, expect, test } from 'vitest';
import { optimumForcedGap_m } from '../../../../src/core/fins/optimumForcedGap_m.ts';

const gap_m = optimumForcedGap_m(0.05, 20, 1.84e-5, 2.2e-5);

describe('optimumForcedGap_m', () => {
  test('halves at sixteen times the pressure and doubles at four times the length', () => {
    expect(optimumForcedGap_m(0.05, 320, 1.84e-5, 2.2e-5)).toBeCloseTo(gap_m / 2, 12);
    expect(optimumForcedGap_m(0.2, 20, 1.84e-5, 2.2e-5)).toBeCloseTo(gap_m * 2, 12);
  });

  test('is wider in thick or well conducting air', () => {
    expect(optimumForcedGap_m(0.05, 20, 2e-5, 2.2e-5)).toBeGreaterThan(gap_m);
    expect(optimumForcedGap_m(0.05, 20, 1.84e-5, 2.5e-5)).toBeGreaterThan(gap_m);
  });
});
