import { describe, expect, test } from 'vitest';
import { overallEfficiency } from '../../../../src/core/fins/overallEfficiency.ts';

describe('overallEfficiency', () => {
  test('is the fin’s own where all is fin, and one where nothing is', () => {
    expect(overallEfficiency(0.02, 0.02, 0.8)).toBeCloseTo(0.8, 12);
    expect(overallEfficiency(0, 0.02, 0.8)).toBe(1);
  });

  test('gives the same heat as fins and bare stretches by themselves', () => {
    const [fins, bare, eta] = [0.018, 0.004, 0.87];
    expect((fins + bare) * overallEfficiency(fins, fins + bare, eta)).toBeCloseTo(bare + eta * fins, 12);
  });
});
