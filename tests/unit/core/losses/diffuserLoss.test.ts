import { describe, expect, test } from 'vitest';
import { diffuserLoss } from '../../../../src/core/losses/diffuserLoss.ts';
import { suddenExpansion } from '../../../../src/core/losses/suddenExpansion.ts';

describe('diffuserLoss', () => {
  test('a duct that stays as wide costs nothing', () => expect(diffuserLoss(0.5, 1)).toBe(0));

  test('a flat shoulder is a sudden widening', () => {
    const within = 0.006; // the table is a fit that ends 0.5 % above the momentum balance
    expect(Math.abs(diffuserLoss(Math.PI, 0.5) / suddenExpansion(0.5) - 1)).toBeLessThan(within);
  });

  test('a steep cone is worse than a shoulder, a gentle one far better', () => {
    expect(diffuserLoss(Math.PI / 3, 0.4)).toBeGreaterThan(diffuserLoss(Math.PI, 0.4));
    expect(diffuserLoss(Math.PI / 18, 0.4)).toBeLessThan(0.25 * diffuserLoss(Math.PI, 0.4));
  });
});
