import { describe, expect, test } from 'vitest';
import { isothermalSinkResistance_KPerW } from '../../../../src/core/fins/isothermalSinkResistance_KPerW.ts';
import { sinkAirConductance_WPerK } from '../../../../src/core/fins/sinkAirConductance_WPerK.ts';

describe('sinkAirConductance_WPerK', () => {
  test.each([
    [2, 2],
    [0.8, 2.38],
    [5, 1],
    [1e-4, 3],
    [50, 0.5],
  ])('in series with UA %f and ṁc_p %f gives exactly the heat of the whole sink', (UA, capacity) => {
    const series = 1 / UA + 1 / sinkAirConductance_WPerK(UA, capacity);
    expect(series / isothermalSinkResistance_KPerW(UA, capacity)).toBeCloseTo(1, 11);
  });

  test('is twice ṁc_p with much air and ṁc_p with little', () => {
    expect(sinkAirConductance_WPerK(1e-9, 3)).toBeCloseTo(6, 8);
    expect(sinkAirConductance_WPerK(0, 3)).toBe(6);
    // The limit is reached as 1/NTU.
    expect(sinkAirConductance_WPerK(1e9, 3)).toBeCloseTo(3, 7);
  });

  test('joins its series without a step', () => {
    const below = sinkAirConductance_WPerK(0.999999e-3, 1);
    const above = sinkAirConductance_WPerK(1.000001e-3, 1);
    // Slope −1/3 over 2e-9, and rounding of 1 − ε/NTU.
    expect(Math.abs(below - above)).toBeLessThan(1e-9);
  });

  test('is nil without air', () => {
    expect(sinkAirConductance_WPerK(1, 0)).toBe(0);
    expect(sinkAirConductance_WPerK(0, 0)).toBe(0);
  });
});
