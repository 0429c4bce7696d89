import { describe, expect, test } from 'vitest';
import { resistanceDrift } from '../../../../src/core/resistor/resistanceDrift.ts';

describe('resistanceDrift', () => {
  test('adds the linear and the square part', () => {
    expect(resistanceDrift(100, 50e-6, -0.4e-6)).toBeCloseTo(5e-3 - 4e-3, 15);
  });

  test('is nil without a rise, and changes only its linear sign below', () => {
    expect(resistanceDrift(0, 50e-6, 1e-6)).toBe(0);
    expect(resistanceDrift(-100, 50e-6, 0.4e-6)).toBeCloseTo(-5e-3 + 4e-3, 15);
  });
});
