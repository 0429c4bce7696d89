import { describe, expect, test } from 'vitest';
import { finEntranceLoss } from '../../../../src/core/losses/finEntranceLoss.ts';
import { coreEntranceLoss } from '../../../../src/core/losses/venaContracta.ts';

describe('finEntranceLoss', () => {
  test('fins without thickness cost no entrance', () => expect(finEntranceLoss(1)).toBe(0));

  test('it is the jet contraction for a flat profile, not the one that holds the profile change', () => {
    for (const sigma of [0, 0.2, 0.4, 0.6, 0.8]) {
      expect(Math.abs(finEntranceLoss(sigma) - coreEntranceLoss(sigma, 1))).toBeLessThan(0.016);
      expect(coreEntranceLoss(sigma, 1.2) - finEntranceLoss(sigma)).toBeGreaterThan(0.38);
    }
  });
});
