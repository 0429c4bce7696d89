import { describe, expect, test } from 'vitest';
import { frictionDevelopedSeries } from '../../../../src/core/channel/frictionDevelopedSeries.ts';

describe('frictionDevelopedSeries', () => {
  test('tends to 24 as a slot gets ever wider', () => {
    expect(frictionDevelopedSeries(1e-6)).toBeCloseTo(24, 3);
  });

  test('falls towards the square', () => {
    for (let aspect = 0.05; aspect < 1; aspect += 0.05) {
      expect(frictionDevelopedSeries(aspect + 0.05)).toBeLessThan(frictionDevelopedSeries(aspect));
    }
  });
});
