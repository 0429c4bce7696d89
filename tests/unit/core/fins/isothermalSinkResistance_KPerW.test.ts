import { describe, expect, test } from 'vitest';
import { isothermalSinkResistance_KPerW } from '../../../../src/core/fins/isothermalSinkResistance_KPerW.ts';

describe('isothermalSinkResistance_KPerW', () => {
  test('with much air is 1/UA, with little 1/(ṁc_p)', () => {
    expect(isothermalSinkResistance_KPerW(0.5, 1e6)).toBeCloseTo(2, 5);
    expect(isothermalSinkResistance_KPerW(1e6, 0.5)).toBe(2);
  });

  test('stays a number at a trickle and at a storm', () => {
    expect(isothermalSinkResistance_KPerW(1, 1e-12)).toBeCloseTo(1e12, 0);
    expect(isothermalSinkResistance_KPerW(1e-9, 1e9)).toBeCloseTo(1e9, 0);
  });
});
