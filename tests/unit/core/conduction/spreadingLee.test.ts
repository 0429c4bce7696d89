import { describe, expect, test } from 'vitest';
import { prepareSpreading, spreadingPeak_KPerW } from '../../../../src/core/conduction/spreadingLee.ts';

describe('spreadingPeak_KPerW', () => {
  test('a source as large as its plate has no spreading', () => {
    expect(spreadingPeak_KPerW(prepareSpreading(625e-6, 625e-6, 2e-3), 200, 500)).toBe(0);
  });

  test('a plate that is hardly cooled has the greatest, finite spreading', () => {
    const spreading = prepareSpreading(20e-6, 625e-6, 2e-3);
    const stagnant = spreadingPeak_KPerW(spreading, 200, 0);
    expect(stagnant).toBeGreaterThan(spreadingPeak_KPerW(spreading, 200, 500));
    expect(Number.isFinite(stagnant)).toBe(true);
  });

  test('on a thick plate neither thickness nor cooling matters', () => {
    const thick = prepareSpreading(20e-6, 625e-6, 0.1);
    expect(spreadingPeak_KPerW(thick, 200, 1000)).toBeCloseTo(spreadingPeak_KPerW(thick, 200, 10), 9);
  });

  test('twice the size at half the coefficient has half the resistance', () => {
    const small = spreadingPeak_KPerW(prepareSpreading(20e-6, 625e-6, 2e-3), 200, 500);
    const large = spreadingPeak_KPerW(prepareSpreading(80e-6, 2500e-6, 4e-3), 200, 250);
    expect(large / small).toBeCloseTo(0.5, 12);
  });
});
