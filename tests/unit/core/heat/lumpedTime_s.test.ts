import { describe, expect, test } from 'vitest';
import { lumpedRise_K } from '../../../../src/core/heat/lumpedRise_K.ts';
import { lumpedTime_s } from '../../../../src/core/heat/lumpedTime_s.ts';

describe('lumpedTime_s', () => {
  test('undoes the rise', () => {
    const rise_K = lumpedRise_K(10, 3, 120, 45);
    expect(lumpedTime_s(120, 30, 30 - rise_K)).toBeCloseTo(45, 9);
  });

  test('is zero for a body that is there already', () => {
    expect(lumpedTime_s(120, 5, 8)).toBe(0);
  });

  test('takes cooling like warming', () => {
    expect(lumpedTime_s(120, -30, -3)).toBe(lumpedTime_s(120, 30, 3));
  });
});
