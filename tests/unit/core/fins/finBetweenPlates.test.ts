import { describe, expect, test } from 'vitest';
import { finBetweenPlates } from '../../../../src/core/fins/finBetweenPlates.ts';
import { finEfficiency } from '../../../../src/core/fins/finEfficiency.ts';

const out = new Float64Array(2);

function fin(h: number, k: number, t: number, H: number, L: number, bothEnds = true) {
  finBetweenPlates(out, h, k, t, H, L, bothEnds);
  return { air: out[0] as number, across: out[1] as number };
}

describe('finBetweenPlates', () => {
  test('with equal plates is two fins of half the height', () => {
    const { air } = fin(45, 180, 0.8e-3, 50e-3, 40e-3);
    expect(air).toBeCloseTo(2 * 45 * 25e-3 * 40e-3 * finEfficiency(45, 180, 0.8e-3, 25e-3), 14);
  });

  test('with an open tip is the straight fin, and nothing crosses', () => {
    const open = fin(45, 180, 0.8e-3, 25e-3, 40e-3, false);
    expect(open.air).toBeCloseTo(2 * 45 * 25e-3 * 40e-3 * finEfficiency(45, 180, 0.8e-3, 25e-3), 14);
    expect(open.across).toBe(0);
  });

  test('without heat transfer is a bar', () => {
    expect(fin(0, 200, 1e-3, 40e-3, 50e-3)).toEqual({ air: 0, across: (200 * 1e-3 * 50e-3) / 40e-3 });
  });

  test('comes near the bar and half the bare area for a very good conductor', () => {
    const { air, across } = fin(30, 1e9, 1e-3, 40e-3, 50e-3);
    expect(air / (30 * 40e-3 * 50e-3)).toBeCloseTo(1, 6);
    expect(across / ((1e9 * 1e-3 * 50e-3) / 40e-3)).toBeCloseTo(1, 6);
  });

  test('lets nothing across a fin that is long beyond measure, in finite numbers', () => {
    const { air, across } = fin(1e6, 0.1, 1e-4, 1, 0.1);
    expect(Number.isFinite(air)).toBe(true);
    expect(across).toBeGreaterThanOrEqual(0);
    expect(across).toBeLessThan(1e-100);
  });
});
