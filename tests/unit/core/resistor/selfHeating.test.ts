import { expect, test } from 'vitest';
import { reference_K, resistanceOver, selfHeatingDrift } from '../../../../src/core/resistor/selfHeating.ts';

test('at its reference a resistance is itself', () => {
  expect(resistanceOver(reference_K, 25e-6, 1e-7)).toBe(1);
});

test('25 ppm/K over 40 K are 1000 ppm, from the reference', () => {
  expect(selfHeatingDrift(reference_K, reference_K + 40, 25e-6, 0)).toBeCloseTo(1e-3, 15);
});

test('a square coefficient counts from the reference, not from the room', () => {
  const drift = selfHeatingDrift(reference_K + 10, reference_K + 30, 0, 1e-7);
  expect(drift).toBeCloseTo((900 - 100) * 1e-7, 8);
});
