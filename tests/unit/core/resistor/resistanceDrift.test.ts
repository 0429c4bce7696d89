import { describe, expect, test } from 'vitest';
import { resistanceDrift } from '../../../../src/core/resistor/resistanceDrift.ts';

describe('resistanceDrift', () => {
  test('is 1000 ppm after 40 K at 25 ppm/K', () => {
    expect(resistanceDrift(40, 25e-6, 0)).toBeCloseTo(1e-3, 12);
  });

  test('bends by its square coefficient, both ways alike', () => {
    expect(resistanceDrift(50, 0, -2e-8)).toBeCloseTo(-5e-5, 15);
    expect(resistanceDrift(-50, 0, -2e-8)).toBeCloseTo(-5e-5, 15);
  });
});
