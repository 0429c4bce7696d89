import { describe, expect, test } from 'vitest';
import { seededDraws } from '../../../../src/core/solve/draws.ts';
import { quantile } from '../../../../src/core/solve/quantile.ts';

const count = 100_000;

function sample(draw: () => number): { mean: number; deviation: number; sorted: Float64Array } {
  const sorted = Float64Array.from({ length: count }, draw).sort();
  const mean = sorted.reduce((sum, x) => sum + x, 0) / count;
  const variance = sorted.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (count - 1);
  return { mean, deviation: Math.sqrt(variance), sorted };
}

describe('seededDraws', () => {
  test('repeats to the last bit with the same seed, and only then', () => {
    const take = (seed: number) => {
      const draws = seededDraws(seed);
      return Array.from({ length: 20 }, (_, i) =>
        i % 3 === 0 ? draws.uniform() : i % 3 === 1 ? draws.normal(0, 1) : draws.lognormal(1, 0.2),
      );
    };
    expect(take(42)).toEqual(take(42));
    expect(take(42)).not.toEqual(take(43));
  });

  // Tolerances below: five standard errors of the sample's own statistic.
  test('uniform: even from 0 to 1', () => {
    const { mean, deviation, sorted } = sample(seededDraws(1).uniform);
    expect(Math.abs(mean - 0.5)).toBeLessThan(5 / Math.sqrt(12 * count));
    expect(Math.abs(deviation - Math.sqrt(1 / 12))).toBeLessThan(2.5e-3);
    expect(sorted[0]).toBeGreaterThanOrEqual(0);
    expect(sorted[count - 1]).toBeLessThan(1);
  });

  test('normal: mean, deviation and tails', () => {
    const draws = seededDraws(2);
    const { mean, deviation, sorted } = sample(() => draws.normal(10, 2));
    expect(Math.abs(mean - 10)).toBeLessThan((5 * 2) / Math.sqrt(count));
    expect(Math.abs(deviation - 2)).toBeLessThan((5 * 2) / Math.sqrt(2 * count));
    expect(Math.abs(quantile(sorted, 0.975) - (10 + 2 * 1.959964))).toBeLessThan(0.085);
    expect(Math.abs(quantile(sorted, 0.025) - (10 - 2 * 1.959964))).toBeLessThan(0.085);
  });

  test('normal: one draw tells nothing about the next', () => {
    const draws = seededDraws(3);
    let product = 0;
    let before = draws.normal(0, 1);
    for (let i = 0; i < count; i++) {
      const here = draws.normal(0, 1);
      product += before * here;
      before = here;
    }
    expect(Math.abs(product / count)).toBeLessThan(5 / Math.sqrt(count));
  });

  test('lognormal: arithmetic mean and coefficient of variation, never at or below zero', () => {
    const draws = seededDraws(4);
    const { mean, deviation, sorted } = sample(() => draws.lognormal(3, 0.5));
    expect(Math.abs(mean - 3)).toBeLessThan((5 * 1.5) / Math.sqrt(count));
    expect(Math.abs(deviation / mean - 0.5)).toBeLessThan(0.02);
    expect(sorted[0]).toBeGreaterThan(0);
  });

  test('without spread is its mean', () => {
    const draws = seededDraws(5);
    expect(draws.normal(7, 0)).toBe(7);
    expect(draws.lognormal(7, 0)).toBeCloseTo(7, 14);
  });
});
