import { describe, expect, test } from 'vitest';
import { density_kgPerM3 } from '../../../../src/core/air/density_kgPerM3.ts';

describe('density_kgPerM3', () => {
  test('doubles with pressure', () => {
    expect(density_kgPerM3(300, 2e5)).toBeCloseTo(2 * density_kgPerM3(300, 1e5), 12);
  });

  test('halves at twice the absolute temperature', () => {
    expect(density_kgPerM3(600, 1e5)).toBeCloseTo(density_kgPerM3(300, 1e5) / 2, 12);
  });
});
