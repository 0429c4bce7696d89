import { describe, expect, test } from 'vitest';
import { bondResistance_KPerW } from '../../../../src/core/conduction/bondResistance_KPerW.ts';

describe('bondResistance_KPerW', () => {
  test('a fifth of voids makes the layer a quarter worse', () => {
    const sound = bondResistance_KPerW(0.15e-3, 1, 20e-6, 0, 0);
    expect(bondResistance_KPerW(0.15e-3, 1, 20e-6, 0.2, 0) / sound).toBeCloseTo(1.25, 12);
  });

  test('a bond without thickness is its two contacts', () => {
    expect(bondResistance_KPerW(0, 1, 20e-6, 0.2, 1e-5)).toBeCloseTo(1, 12);
  });

  test('both faces add to the layer', () => {
    const layer = bondResistance_KPerW(0.15e-3, 1, 20e-6, 0, 0);
    expect(bondResistance_KPerW(0.15e-3, 1, 20e-6, 0, 2e-5) - layer).toBeCloseTo(2, 12);
  });
});
