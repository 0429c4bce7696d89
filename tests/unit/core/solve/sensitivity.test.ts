import { describe, expect, test } from 'vitest';
import { normalQuantile } from '../../../../src/core/solve/normal.ts';
import { quasiRandom } from '../../../../src/core/solve/quasiRandom.ts';
import { firstOrderIndices, rankCorrelation } from '../../../../src/core/solve/sensitivity.ts';

/** Standard normal inputs, evenly drawn; `skip` dimensions first: 161 leave the pseudo-random ones. */
function normals(inputs: number, count: number, seed = 1, skip = 0): Float64Array[] {
  const width = skip + inputs;
  const points = new Float64Array(width * count);
  quasiRandom(width, seed).fill(0, count, points);
  return Array.from({ length: inputs }, (_, d) =>
    Float64Array.from({ length: count }, (_, i) => normalQuantile(points[i * width + skip + d] as number)),
  );
}

function weighted(columns: readonly Float64Array[], weights: readonly number[]): Float64Array {
  return Float64Array.from(columns[0] as Float64Array, (_, i) =>
    weights.reduce((sum, weight, d) => sum + weight * (columns[d]?.[i] as number), 0),
  );
}

describe('firstOrderIndices', () => {
  // A sum of independent normals: each brings its own variance, 9, 4, 1 and 0 of 14.
  test.each([
    [256, 0.02],
    [1024, 0.004],
    [4096, 0.001],
  ])('of a sum are the shares of the variances, %i draws', (count, within) => {
    const columns = normals(4, count);
    const shares = firstOrderIndices(columns, weighted(columns, [3, 2, -1, 0]));
    [9 / 14, 4 / 14, 1 / 14, 0].forEach((share, d) => {
      expect(Math.abs((shares[d] as number) - share)).toBeLessThan(within);
    });
  });

  test.each([
    ['evenly', 0, 0.008, 0.04],
    ['at random', 161, 0.03, 0.15],
  ] as const)('of forty alike, drawn %s, are a fortieth each and 1 together', (_, skip, within, together) => {
    for (const seed of [1, 2, 3]) {
      const columns = normals(40, 2048, seed, skip);
      const shares = firstOrderIndices(columns, weighted(columns, Array(40).fill(1)));
      expect(Math.max(...shares.map((share) => Math.abs(share - 0.025)))).toBeLessThan(within);
      expect(Math.abs(shares.reduce((sum, share) => sum + share, 0) - 1)).toBeLessThan(together);
    }
  });

  test('of sixty inputs without effect stay near nothing even with random draws', () => {
    const columns = normals(61, 1000, 2, 161);
    const [first, ...rest] = firstOrderIndices(columns, columns[0] as Float64Array);
    expect(first).toBeCloseTo(1, 10);
    expect(Math.max(...rest)).toBeLessThan(0.025);
    expect(rest.reduce((sum, share) => sum + share, 0) / 60).toBeLessThan(0.003);
  });

  test('follow a curve as well as a line', () => {
    const columns = normals(2, 4096);
    const result = Float64Array.from(
      columns[0] as Float64Array,
      (x, i) => x * x + (columns[1]?.[i] as number),
    );
    // Variances of x² and x: 2 and 1.
    const [square, line] = firstOrderIndices(columns, result) as [number, number];
    expect(Math.abs(square - 2 / 3)).toBeLessThan(0.01);
    expect(Math.abs(line - 1 / 3)).toBeLessThan(0.005);
  });

  test('of a product of two centred inputs are nothing: all of it is done together', () => {
    const columns = normals(2, 4096);
    const result = Float64Array.from(columns[0] as Float64Array, (x, i) => x * (columns[1]?.[i] as number));
    expect(Math.max(...firstOrderIndices(columns, result))).toBeLessThan(0.01);
  });

  test('of an input with few different values are right all the same', () => {
    const [x, y] = normals(2, 4096) as [Float64Array, Float64Array];
    const side = x.map((value) => (value > 0 ? 1 : -1));
    const [sides, other] = firstOrderIndices([side, y], weighted([side, y], [1, 1])) as [number, number];
    expect(Math.abs(sides - 0.5)).toBeLessThan(0.005);
    expect(Math.abs(other - 0.5)).toBeLessThan(0.005);
  });

  test('are 0 for a constant result, a constant input, and where draws are too few to tell', () => {
    const [x, y] = normals(2, 64) as [Float64Array, Float64Array];
    const still = new Float64Array(64).fill(1e6 / 3);
    expect(firstOrderIndices([x, y], still)).toEqual([0, 0]);
    expect(firstOrderIndices([still, x], x)[0]).toBe(0);
    expect(firstOrderIndices([], x)).toEqual([]);
    for (const n of [0, 1, 2]) expect(firstOrderIndices([x.slice(0, n)], y.slice(0, n))).toEqual([0]);
    for (const n of [3, 4, 5, 9, 17]) {
      const [share] = firstOrderIndices([x.slice(0, n)], y.slice(0, n)) as [number];
      expect(share >= 0 && share <= 1).toBe(true);
    }
  });

  test('can be told their classes', () => {
    const [x, y] = normals(2, 4096) as [Float64Array, Float64Array];
    const wave = x.map((value) => Math.sin(12 * value));
    const result = weighted([wave, y], [Math.SQRT2, 1]);
    expect(firstOrderIndices([x, y], result)[0]).toBeLessThan(0.3);
    expect(Math.abs((firstOrderIndices([x, y], result, 60)[0] as number) - 0.5)).toBeLessThan(0.04);
  });
});

describe('rankCorrelation', () => {
  // Expected numbers: scipy 1.17.1, spearmanr, a second implementation.
  test.each([
    [[1, 2, 2, 3, 5], [2, 1, 4, 4, 9], 0.7631578947368421],
    [[3, 3, 3, 1, 2, 2], [1, 5, 2, 2, 8, 8], -0.38138503569823695],
    [[1, 1, 2, 2], [1, 2, 1, 2], 0],
  ])('of %j and %j is %f', (a, b, expected) => {
    expect(rankCorrelation(a, b)).toBeCloseTo(expected, 14);
    expect(rankCorrelation(b, a)).toBeCloseTo(expected, 14);
  });

  test('minds the order alone', () => {
    const x = Float64Array.from({ length: 50 }, (_, i) => Math.sin(9 * i));
    expect(rankCorrelation(x, x.map(Math.exp))).toBe(1);
    expect(
      rankCorrelation(
        x,
        x.map((value) => -(value ** 3)),
      ),
    ).toBe(-1);
  });

  test('is 0 where there is nothing to order', () => {
    expect([rankCorrelation([], []), rankCorrelation([1], [2]), rankCorrelation([1, 2], [3, 3])]).toEqual([
      0, 0, 0,
    ]);
  });
});
