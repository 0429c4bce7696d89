import { describe, expect, test } from 'vitest';
import { sampleSummary } from '../../../../src/core/solve/sampleSummary.ts';

describe('sampleSummary', () => {
  test('has mean, deviation of what was drawn from, and the values in order', () => {
    const values = [4, 2, 9, 5];
    const summary = sampleSummary(values);
    expect(summary?.mean).toBe(5);
    expect(summary?.deviation).toBeCloseTo(Math.sqrt(26 / 3), 14);
    expect([...(summary?.sorted ?? [])]).toEqual([2, 4, 5, 9]);
    expect(values).toEqual([4, 2, 9, 5]);
  });

  test('of one value and of equal ones has no deviation, to the last bit', () => {
    expect(sampleSummary([0.1])).toMatchObject({ mean: 0.1, deviation: 0 });
    expect(sampleSummary(Array(1000).fill(1e9 / 3))).toMatchObject({ mean: 1e9 / 3, deviation: 0 });
  });

  test('keeps a small spread on a large number', () => {
    const summary = sampleSummary([1e9 + 0.25, 1e9 + 0.5, 1e9 + 0.75]);
    expect(summary).toMatchObject({ mean: 1e9 + 0.5, deviation: 0.25 });
  });

  test('of nothing is nothing', () => {
    expect(sampleSummary([])).toBeNull();
  });
});
