import { describe, expect, test } from 'vitest';
import { optimumForcedGap_m } from '../../../../src/core/fins/optimumForcedGap_m.ts';

describe('optimumForcedGap_m', () => {
  const gap_m = optimumForcedGap_m(0.05, 20, 1.84e-5, 2.2e-5);

  test('grows with the root of the length', () => {
    expect(optimumForcedGap_m(0.2, 20, 1.84e-5, 2.2e-5) / gap_m).toBeCloseTo(2, 12);
  });

  test('shrinks with the fourth root of the pressure', () => {
    expect(optimumForcedGap_m(0.05, 320, 1.84e-5, 2.2e-5) / gap_m).toBeCloseTo(0.5, 12);
  });
});
