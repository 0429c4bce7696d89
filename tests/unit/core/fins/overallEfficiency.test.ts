import { describe, expect, test } from 'vitest';
import { overallEfficiency } from '../../../../src/core/fins/overallEfficiency.ts';

describe('overallEfficiency', () => {
  test('weighs fins and bare stretches by area', () => {
    expect(overallEfficiency(3, 4, 0.8)).toBeCloseTo((3 * 0.8 + 1) / 4, 15);
  });

  test('is whole without fins and the fin’s own without bare stretches', () => {
    expect(overallEfficiency(0, 4, 0.3)).toBe(1);
    expect(overallEfficiency(4, 4, 0.3)).toBeCloseTo(0.3, 15);
  });
});
