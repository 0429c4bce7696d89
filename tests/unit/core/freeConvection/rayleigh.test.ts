import { describe, expect, test } from 'vitest';
import { buoyancy_PerM3K, rayleigh } from '../../../../src/core/freeConvection/rayleigh.ts';

describe('rayleigh', () => {
  const buoyancy = buoyancy_PerM3K(1 / 300, 1.6e-5, 2.2e-5);

  test('grows with the cube of the length', () => {
    expect(rayleigh(buoyancy, 20, 0.2) / rayleigh(buoyancy, 20, 0.1)).toBeCloseTo(8, 12);
  });

  test('is zero without a temperature difference', () => {
    expect(rayleigh(buoyancy, 0, 0.2)).toBe(0);
  });
});
