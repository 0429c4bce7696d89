import { describe, expect, test } from 'vitest';
import { momentumFactor } from '../../../../src/core/channel/momentumFactor.ts';

describe('momentumFactor', () => {
  test('is 6/5 for the parabola between plates', () => expect(momentumFactor(0)).toBe(1.2));

  test('rises towards the square without a bump between knots', () => {
    for (let aspect = 0; aspect < 0.99; aspect += 0.01) {
      expect(momentumFactor(aspect + 0.01)).toBeGreaterThan(momentumFactor(aspect));
    }
  });
});
