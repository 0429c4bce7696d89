import { describe, expect, test } from 'vitest';
import { neckDownLoss } from '../../../../src/core/losses/neckDownLoss.ts';

describe('neckDownLoss', () => {
  test('a duct that stays as wide costs nothing', () => expect(neckDownLoss(Math.PI / 2, 1)).toBe(0));

  test('the gentler the cone, the less it costs', () => {
    for (let angle = 0; angle < Math.PI - 0.05; angle += 0.05) {
      expect(neckDownLoss(angle + 0.05, 0.4)).toBeGreaterThan(neckDownLoss(angle, 0.4));
    }
  });
});
