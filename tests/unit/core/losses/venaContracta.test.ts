import { describe, expect, test } from 'vitest';
import { coreEntranceLoss, venaContracta } from '../../../../src/core/losses/venaContracta.ts';

describe('venaContracta', () => {
  test('is π/(π + 2) for a slit in an endless wall', () => {
    expect(venaContracta(0)).toBeCloseTo(Math.PI / (Math.PI + 2), 9);
  });

  test('does not contract where there is nothing to contract', () => {
    expect(venaContracta(1)).toBeCloseTo(1, 5);
  });

  test('solves its own equation', () => {
    for (const sigma of [0.1, 0.5, 0.9]) {
      const cc = venaContracta(sigma);
      const x = cc * sigma;
      expect(1 + (2 / Math.PI) * (1 / x - x) * Math.atan(x)).toBeCloseTo(1 / cc, 9);
    }
  });
});

describe('coreEntranceLoss', () => {
  test('a profile that carries more momentum costs twice what it carries more', () => {
    expect(coreEntranceLoss(0.4, 1.2) - coreEntranceLoss(0.4, 1)).toBeCloseTo(0.4, 9);
  });
});
