import { describe, expect, test } from 'vitest';
import { optimumForcedGap_m } from '../../../../src/core/fins/optimumForcedGap_m.ts';
import { optimumForcedGapCrossing_m } from '../../../../src/core/fins/optimumForcedGapCrossing_m.ts';

describe('optimumForcedGapCrossing_m', () => {
  test.each([
    [0.02, 5],
    [0.05, 20],
    [0.15, 80],
  ])('is a tenth below the full solution at any size (%f m, %f Pa)', (length_m, dp_Pa) => {
    const ratio =
      optimumForcedGapCrossing_m(length_m, dp_Pa, 1.84e-5, 2.2e-5) /
      optimumForcedGap_m(length_m, dp_Pa, 1.84e-5, 2.2e-5);
    expect(ratio).toBeCloseTo(0.9, 2);
  });
});
