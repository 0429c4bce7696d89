import { describe, expect, test } from 'vitest';
import { slabResistance_KPerW } from '../../../../src/core/conduction/slabResistance_KPerW.ts';

describe('slabResistance_KPerW', () => {
  test('two half layers in a row are one whole layer', () => {
    const half_KPerW = slabResistance_KPerW(1e-3, 27, 20e-6);
    expect(2 * half_KPerW).toBeCloseTo(slabResistance_KPerW(2e-3, 27, 20e-6), 12);
  });

  test('a layer without thickness is no resistance', () => {
    expect(slabResistance_KPerW(0, 27, 20e-6)).toBe(0);
  });
});
