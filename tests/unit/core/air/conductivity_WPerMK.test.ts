import { describe, expect, test } from 'vitest';
import { conductivity_WPerMK } from '../../../../src/core/air/conductivity_WPerMK.ts';

describe('conductivity_WPerMK', () => {
  test('rises with temperature', () => {
    for (let T = 170; T < 600; T += 10)
      expect(conductivity_WPerMK(T + 10)).toBeGreaterThan(conductivity_WPerMK(T));
  });

  test('has the power of ten of the standard in its exponent', () => {
    const T = 250;
    expect(conductivity_WPerMK(T)).toBeCloseTo((2.64638e-3 * T ** 1.5) / (T + 245.4 * 10 ** (-12 / T)), 14);
  });
});
