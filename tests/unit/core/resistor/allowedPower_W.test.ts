import { describe, expect, test } from 'vitest';
import { allowedPower_W, allowedTemperature_K } from '../../../../src/core/resistor/allowedPower_W.ts';

describe('allowedPower_W', () => {
  test.each([
    [200, 5],
    [343.15, 5],
    [385.65, 2.5],
    [428.15, 0],
    [500, 0],
  ])('at %f K is %f W of 5 W', (T_K, power_W) => {
    expect(allowedPower_W(T_K, 5, 343.15, 428.15)).toBeCloseTo(power_W, 12);
  });

  test('falls off at once where both temperatures are the same', () => {
    expect(allowedPower_W(400, 5, 400, 400)).toBe(5);
    expect(allowedPower_W(400.1, 5, 400, 400)).toBe(0);
  });
});

describe('allowedTemperature_K', () => {
  test('is the way back', () => {
    for (const power_W of [0.1, 2, 5]) {
      const T_K = allowedTemperature_K(power_W, 5, 343.15, 428.15);
      expect(allowedPower_W(T_K, 5, 343.15, 428.15)).toBeCloseTo(power_W, 12);
    }
  });

  test('without power is where the line ends', () => {
    expect(allowedTemperature_K(0, 5, 343.15, 428.15)).toBe(428.15);
  });
});
