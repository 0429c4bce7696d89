import { describe, expect, test } from 'vitest';
import { fanHeatRise_K } from '../../../../src/core/fan/fanHeatRise_K.ts';

describe('fanHeatRise_K', () => {
  test('of 12 W in 0.01 kg/s of air is 1.2 K at 1000 J/(kg·K)', () => {
    expect(fanHeatRise_K(12, 0.008, 1.25, 1000)).toBeCloseTo(1.2, 13);
  });

  test('doubles in half the flow', () => {
    expect(fanHeatRise_K(3, 0.004, 1.2, 1006)).toBeCloseTo(2 * fanHeatRise_K(3, 0.008, 1.2, 1006), 12);
  });
});
