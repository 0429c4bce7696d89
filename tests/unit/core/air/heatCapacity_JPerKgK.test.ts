import { describe, expect, test } from 'vitest';
import { heatCapacity_JPerKgK } from '../../../../src/core/air/heatCapacity_JPerKgK.ts';

describe('heatCapacity_JPerKgK', () => {
  test('is least at 200 K', () => {
    expect(heatCapacity_JPerKgK(200)).toBe(1002.5);
    expect(heatCapacity_JPerKgK(190)).toBeGreaterThan(1002.5);
    expect(heatCapacity_JPerKgK(210)).toBeGreaterThan(1002.5);
  });
});
