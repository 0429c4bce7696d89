import { describe, expect, test } from 'vitest';
import { frictionDeveloped } from '../../../../src/core/channel/frictionDeveloped.ts';
import { frictionDevelopedSeries } from '../../../../src/core/channel/frictionDevelopedSeries.ts';

describe('frictionDeveloped', () => {
  test('is 24 between plates', () => expect(frictionDeveloped(0)).toBe(24));

  test('stays within its stated 0.06 % of the exact series at every aspect', () => {
    for (let aspect = 0.01; aspect <= 1; aspect += 0.01) {
      expect(Math.abs(frictionDeveloped(aspect) / frictionDevelopedSeries(aspect) - 1)).toBeLessThan(6.5e-4); // stated with one digit
    }
  });
});
