import { describe, expect, test } from 'vitest';
import { channelExitDucted } from '../../../../src/core/losses/channelExitDucted.ts';
import { suddenExpansion } from '../../../../src/core/losses/suddenExpansion.ts';

describe('channelExitDucted', () => {
  test('a flat profile is a sudden widening', () => {
    for (const sigma of [0, 0.3, 0.7, 1]) {
      expect(channelExitDucted(sigma, 1)).toBeCloseTo(suddenExpansion(sigma), 14);
    }
  });
});
