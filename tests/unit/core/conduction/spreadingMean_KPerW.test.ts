import { describe, expect, test } from 'vitest';
import { prepareSpreading, spreadingPeak_KPerW } from '../../../../src/core/conduction/spreadingLee.ts';
import { spreadingMean_KPerW } from '../../../../src/core/conduction/spreadingMean_KPerW.ts';

describe('spreadingMean_KPerW', () => {
  test('the mean lies below the peak', () => {
    const spreading = prepareSpreading(20e-6, 625e-6, 2e-3);
    const peak = spreadingPeak_KPerW(spreading, 200, 500);
    expect(spreadingMean_KPerW(spreading, 200, 500)).toBeLessThan(peak);
  });

  test('a source as large as its plate has no spreading', () => {
    expect(spreadingMean_KPerW(prepareSpreading(625e-6, 625e-6, 2e-3), 200, 500)).toBe(0);
  });
});
