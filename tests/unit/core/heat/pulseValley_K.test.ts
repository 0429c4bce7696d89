import { describe, expect, test } from 'vitest';
import { lumpedRise_K } from '../../../../src/core/heat/lumpedRise_K.ts';
import { pulsePeak_K } from '../../../../src/core/heat/pulsePeak_K.ts';
import { pulseValley_K } from '../../../../src/core/heat/pulseValley_K.ts';

const train = { power_W: 10, R_KPerW: 8, tau_s: 25, on_s: 10, period_s: 40 };

describe('pulseValley_K', () => {
  test('what is left of the valley and the next pulse make the peak again', () => {
    const carried_K = pulseValley_K(train) * Math.exp(-train.on_s / train.tau_s);
    expect(carried_K + lumpedRise_K(10, 8, 25, train.on_s)).toBeCloseTo(pulsePeak_K(train), 9);
  });

  test('the mean of very quick pulses lies between valley and peak', () => {
    const quick = { ...train, on_s: 0.1, period_s: 0.4 };
    expect(pulseValley_K(quick)).toBeLessThan(20);
    expect(pulsePeak_K(quick)).toBeGreaterThan(20);
  });
});
