import { describe, expect, test } from 'vitest';
import { pulsePeak_K } from '../../../../src/core/heat/pulsePeak_K.ts';

const train = { power_W: 10, R_KPerW: 8, tau_s: 25, on_s: 10, period_s: 40 };

describe('pulsePeak_K', () => {
  test('a load that never rests is a steady load', () => {
    expect(pulsePeak_K({ ...train, on_s: 40 })).toBeCloseTo(80, 12);
  });

  test('very quick pulses blur into their mean', () => {
    expect(pulsePeak_K({ ...train, on_s: 1e-5, period_s: 4e-5 })).toBeCloseTo(20, 4);
  });

  test('a lone pulse stands for itself', () => {
    expect(pulsePeak_K({ ...train, period_s: 1e5 })).toBeCloseTo(80 * (1 - Math.exp(-10 / 25)), 9);
  });
});
