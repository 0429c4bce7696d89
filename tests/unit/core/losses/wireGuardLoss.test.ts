import { describe, expect, test } from 'vitest';
import { wireGuardLoss } from '../../../../src/core/losses/wireGuardLoss.ts';

describe('wireGuardLoss', () => {
  test('falls from a closed to a free opening, where it ends at nothing', () => {
    for (let free = 0.05; free < 0.995; free += 0.01) {
      expect(wireGuardLoss(free + 0.01)).toBeLessThan(wireGuardLoss(free));
    }
    expect(wireGuardLoss(1)).toBe(0);
  });

  test.each([0.3, 1])('does not jump at the end of its table, %f', (free) => {
    expect(wireGuardLoss(free - 1e-9)).toBeCloseTo(wireGuardLoss(free), 6);
  });
});
