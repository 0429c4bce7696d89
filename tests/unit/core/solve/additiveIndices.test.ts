import { describe, expect, test } from 'vitest';
import { type AdditiveInput, additiveIndices } from '../../../../src/core/solve/additiveIndices.ts';
import { normalQuantile } from '../../../../src/core/solve/normal.ts';
import { quasiRandom } from '../../../../src/core/solve/quasiRandom.ts';
import { classIndices } from '../../../helpers/classIndices.ts';

/** Shares of so many draws, each for so many rows. */
function shares(dimensions: number, count: number, seed = 1): Float64Array[] {
  const points = new Float64Array(dimensions * count);
  quasiRandom(dimensions, seed).fill(0, count, points);
  return Array.from({ length: dimensions }, (_, d) =>
    Float64Array.from({ length: count }, (_row, i) => points[i * dimensions + d] as number),
  );
}
const input = (column: Float64Array, change: Partial<AdditiveInput> = {}): AdditiveInput => ({
  shares: column,
  basis: 'legendre',
  degree: 3,
  alike: 1,
  ...change,
});
const only = (inputs: readonly AdditiveInput[], result: Float64Array) =>
  additiveIndices(inputs, [result])?.[0] ?? [];

describe('shares of variance by one fit of all inputs', () => {
  // Var(2u) = 4/12, Var(u³) = 1/7 − 1/16 = 9/112.
  test('are exact for what polynomials can follow', () => {
    const [a, b, c] = shares(3, 256);
    if (!a || !b || !c) throw new Error('three were drawn');
    const [first, second, third] = only(
      [input(a), input(b), input(c)],
      a.map((u, i) => 2 * u + (b[i] as number) ** 3 + 5),
    );
    const whole = 1 / 3 + 9 / 112;
    expect(first).toBeCloseTo(1 / 3 / whole, 9);
    expect(second).toBeCloseTo(9 / 112 / whole, 9);
    expect(third).toBeCloseTo(0, 12);
  });

  // z + 0.5·z²: variances 1 and 0.25·2.
  test('are exact in the normal deviate where that is drawn', () => {
    const [a] = shares(1, 512);
    if (!a) throw new Error('one was drawn');
    const z = a.map(normalQuantile);
    const noise = shares(2, 512, 9)[1] ?? a;
    const result = z.map((each, i) => each + 0.5 * each * each + ((noise[i] as number) - 0.5) * Math.sqrt(6));
    const [first, second] = only([input(a, { basis: 'hermite' }), input(noise)], result);
    expect(first).toBeCloseTo(1.5 / 2, 6);
    expect(second).toBeCloseTo(0.5 / 2, 6);
  });

  test('give nothing to an input that does nothing, however few the draws', () => {
    const columns = shares(30, 128, 5);
    const [a, b] = columns;
    const result = (a ?? new Float64Array(128)).map((u, i) => Math.exp(3 * u) + (b?.[i] ?? 0));
    const [first = 0, second = 0, ...others] = only(
      columns.map((column) => input(column, { degree: 1 })),
      result,
    );
    expect(first).toBeGreaterThan(0.8);
    expect(second).toBeLessThan(0.05);
    for (const other of others) expect(other).toBeLessThan(0.02);
  });

  test('agree with classes of one input after the other where there are many draws', () => {
    const columns = shares(4, 8192);
    const result = Float64Array.from({ length: 8192 }, (_, i) => {
      const [a = 0, b = 0, c = 0, d = 0] = columns.map((column) => column[i] as number);
      return Math.sin(3 * a) + b * b * (1 + 0.5 * c) + 0.1 * d;
    });
    const byFit = only(
      columns.map((column) => input(column)),
      result,
    );
    const byClasses = classIndices(columns, result);
    byFit.forEach((share, d) => {
      expect(share).toBeCloseTo(byClasses[d] ?? 0, 2);
    });
  });

  test('see what rows in groups have in common', () => {
    const groups = shares(1, 64)[0] ?? new Float64Array(0);
    const shared = Float64Array.from({ length: 512 }, (_, i) => groups[Math.floor(i / 8)] as number);
    const own = shares(3, 512, 4)[2] ?? shared;
    const [ofGroup, ofRow] = only(
      [input(shared, { alike: 8 }), input(own)],
      shared.map((u, i) => 2 * u + (own[i] as number)),
    );
    expect(ofGroup).toBeCloseTo(0.8, 9);
    expect(ofRow).toBeCloseTo(0.2, 9);
  });

  test('are nil for a result that is always the same, and none where inputs cannot be told apart', () => {
    const [a] = shares(1, 64);
    if (!a) throw new Error('one was drawn');
    expect(only([input(a)], new Float64Array(64).fill(370))).toEqual([0]);
    expect(
      additiveIndices([input(a), input(new Float64Array(64).fill(0.5))], [a.map((u) => u)])?.[0]?.[1] ?? 0,
    ).toBe(0);
    expect(additiveIndices([input(a.subarray(0, 2))], [a.subarray(0, 2)])).toBeNull();
  });
});
