import { describe, expect, test } from 'vitest';
import { squareGrillLoss } from '../../../../src/core/losses/squareGrillLoss.ts';
import { wireGuardLoss } from '../../../../src/core/losses/wireGuardLoss.ts';

describe('squareGrillLoss', () => {
  test('a free opening costs nothing', () => expect(squareGrillLoss(1)).toBe(0));

  test('square bars cost far more than round wires', () => {
    for (const free of [0.3, 0.5, 0.7])
      expect(squareGrillLoss(free)).toBeGreaterThan(2 * wireGuardLoss(free));
  });
});
