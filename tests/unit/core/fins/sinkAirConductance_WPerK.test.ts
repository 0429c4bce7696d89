import { describe, expect, test } from 'vitest';
import { sinkAirConductance_WPerK } from '../../../../src/core/fins/sinkAirConductance_WPerK.ts';

describe('sinkAirConductance_WPerK', () => {
  test('is twice the stream’s capacity in plenty of air: the mean is half way to the outlet', () => {
    expect(sinkAirConductance_WPerK(1e-4, 3)).toBeCloseTo(6, 3);
  });

  test('is the stream’s capacity in a trickle: nearly all of it leaves as hot as the plate', () => {
    expect(sinkAirConductance_WPerK(1e6, 3)).toBeCloseTo(3, 4);
  });

  test('is nil without air', () => {
    expect(sinkAirConductance_WPerK(2, 0)).toBe(0);
  });

  test('is a number without air and without a sink', () => {
    expect(sinkAirConductance_WPerK(0, 0)).toBe(0);
  });

  test('has no step where its series takes over', () => {
    const below = sinkAirConductance_WPerK(1e-3 * (1 - 1e-9), 1);
    const above = sinkAirConductance_WPerK(1e-3 * (1 + 1e-9), 1);
    expect(Math.abs(above / below - 1)).toBeLessThan(1e-9);
  });
});
