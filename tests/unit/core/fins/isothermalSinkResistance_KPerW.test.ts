import { describe, expect, test } from 'vitest';
import { isothermalSinkResistance_KPerW } from '../../../../src/core/fins/isothermalSinkResistance_KPerW.ts';

describe('isothermalSinkResistance_KPerW', () => {
  test('is 1/UA in plenty of air', () => {
    expect(isothermalSinkResistance_KPerW(0.5, 1e9)).toBeCloseTo(2, 8);
  });

  test('is one over the stream’s capacity in a trickle', () => {
    expect(isothermalSinkResistance_KPerW(1e3, 0.25)).toBeCloseTo(4, 12);
  });
});
