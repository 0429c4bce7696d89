import { describe, expect, test } from 'vitest';
import { punchedPlateLoss } from '../../../../src/core/losses/punchedPlateLoss.ts';

describe('punchedPlateLoss', () => {
  test('a plate that is all hole costs nothing', () => expect(punchedPlateLoss(1)).toBe(0));

  test('with few holes each is a sharp orifice: K·f² tends to 1.707²', () => {
    expect(punchedPlateLoss(1e-9) * 1e-18).toBeCloseTo(1.707 ** 2, 6);
  });
});
