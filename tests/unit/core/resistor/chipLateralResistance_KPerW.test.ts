import { describe, expect, test } from 'vitest';
import { chipLateralResistance_KPerW } from '../../../../src/core/resistor/chipLateralResistance_KPerW.ts';

describe('chipLateralResistance_KPerW', () => {
  test('is the mean of the parabola that even heat leaves between two cold ends', () => {
    const [length, k, width, thickness] = [6e-3, 25, 3e-3, 0.6e-3];
    const n = 2000;
    let sum = 0;
    for (let i = 0; i < n; i++) {
      const x = ((i + 0.5) / n) * length;
      sum += (x * (length - x)) / (2 * k * length * width * thickness);
    }
    expect(chipLateralResistance_KPerW(length, k, width, thickness)).toBeCloseTo(sum / n, 5);
  });
});
