import { describe, expect, test } from 'vitest';
import { allowedPower_W, allowedTemperature_K } from '../../../../src/core/resistor/allowedPower_W.ts';

describe('allowedPower_W', () => {
  test.each([
    [250, 4],
    [343.15, 4],
    [385.65, 2],
    [428.15, 0],
    [500, 0],
  ])('at %f K is %f W of 4 W', (T_K, watts) => {
    expect(allowedPower_W(T_K, 4, 343.15, 428.15)).toBeCloseTo(watts, 12);
  });

  test('falls off at once where both temperatures are the same', () => {
    expect(allowedPower_W(400, 4, 400, 400)).toBe(4);
    expect(allowedPower_W(400.1, 4, 400, 400)).toBe(0);
  });
});

describe('allowedTemperature_K', () => {
  test('is the temperature at which the power is just allowed', () => {
    for (const watts of [0.5, 1, 3, 4]) {
      expect(allowedPower_W(allowedTemperature_K(watts, 4, 343.15, 428.15), 4, 343.15, 428.15)).toBeCloseTo(
        watts,
        12,
      );
    }
  });
});
