import { describe, expect, test } from 'vitest';
import { optimumForcedGap_m } from '../../../../src/core/fins/optimumForcedGap_m.ts';
import { optimumForcedGapCrossing_m } from '../../../../src/core/fins/optimumForcedGapCrossing_m.ts';

describe('optimumForcedGapCrossing_m', () => {
  test('is a tenth narrower than the full solution, whatever the sink', () => {
    for (const [length, dp] of [
      [0.02, 5],
      [0.05, 20],
      [0.3, 100],
    ] as const) {
      const ratio =
        optimumForcedGapCrossing_m(length, dp, 1.84e-5, 2.2e-5) /
        optimumForcedGap_m(length, dp, 1.84e-5, 2.2e-5);
      expect(ratio).toBeCloseTo(0.9, 2);
    }
  });
});
