import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { additiveIndices } from '../../src/core/solve/additiveIndices.ts';
import {
  boundedLognormalQuantile,
  boundedNormalQuantile,
  triangularQuantile,
  uniformQuantile,
} from '../../src/core/solve/distributions.ts';
import { countInBins, roundEdges } from '../../src/core/solve/histogram.ts';
import { quasiRandom } from '../../src/core/solve/quasiRandom.ts';
import { rankCorrelation } from '../../src/core/solve/rankCorrelation.ts';
import { shareInterval } from '../../src/core/solve/shareInterval.ts';

const runs = { seed: 20261126, numRuns: 200 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const seed = fc.integer({ min: -(2 ** 31), max: 2 ** 31 - 1 });

/** Shares of variance by lines. */
function sharesOf(shares: readonly Float64Array[], result: Float64Array): number[] {
  const inputs = shares.map((each) => ({ shares: each, basis: 'legendre', degree: 1, alike: 1 }) as const);
  return additiveIndices(inputs, [result])?.[0] ?? [];
}

/** Any numbers as shares above 0 and below 1. */
const evenly = (column: Float64Array) => column.map((x) => 0.5 + Math.atan(x) / 4);

describe('evenly spread draws', () => {
  test('fall one into each part of every dimension, in every block of a power of two, whatever the seed', () => {
    fc.assert(
      fc.property(
        seed,
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 0, max: 7 }),
        fc.integer({ min: 0, max: 2 ** 20 }),
        (any, dimensions, power, block) => {
          const count = 2 ** power;
          const points = new Float64Array(dimensions * count);
          quasiRandom(dimensions, any).fill(block * count, count, points);
          for (let d = 0; d < dimensions; d++) {
            const parts = Array.from({ length: count }, (_, i) =>
              Math.floor(count * (points[i * dimensions + d] as number)),
            );
            expect(new Set(parts).size).toBe(count);
          }
        },
      ),
      runs,
    );
  });

  test('are the same in one range as in two', () => {
    fc.assert(
      fc.property(
        seed,
        fc.integer({ min: 0, max: 2 ** 32 - 200 }),
        fc.integer({ min: 0, max: 99 }),
        (any, from, first) => {
          const draws = quasiRandom(163, any);
          const [whole, parts] = [new Float64Array(163 * 100), new Float64Array(163 * 100)];
          draws.fill(from, 100, whole);
          draws.fill(from, first, parts);
          draws.fill(from + first, 100 - first, parts.subarray(163 * first));
          expect(parts.every((u, i) => u === whole[i])).toBe(true);
        },
      ),
      { ...runs, numRuns: 40 },
    );
  });
});

const spreads = fc.record({
  mean: between(-100, 100),
  deviation: between(0, 200),
  low: between(-1000, 1000),
  width: between(0, 500),
});

describe('spreads', () => {
  const kinds = {
    uniform: (share: number, _mean: number, _deviation: number, low: number, high: number) =>
      uniformQuantile(share, low, high),
    triangular: (share: number, mean: number, _deviation: number, low: number, high: number) =>
      triangularQuantile(share, low, mean, high),
    normal: boundedNormalQuantile,
    lognormal: boundedLognormalQuantile,
  };
  test.each(Object.entries(kinds))(
    '%s: rises with the share and stays within its bounds, finite',
    (_, spread) => {
      fc.assert(
        fc.property(spreads, between(0, 1), between(0, 1), ({ mean, deviation, low, width }, a, b) => {
          const at = (share: number) => spread(share, mean, deviation, low, low + width);
          const [less, more] = [at(Math.min(a, b)), at(Math.max(a, b))];
          expect(less).toBeGreaterThanOrEqual(low);
          expect(more).toBeLessThanOrEqual(low + width);
          expect(more - less).toBeGreaterThanOrEqual(-1e-9 * (1 + Math.abs(more)));
        }),
        runs,
      );
    },
  );

  test('normal: mirrors with its bounds', () => {
    fc.assert(
      fc.property(spreads, between(0.001, 0.999), ({ mean, deviation, low, width }, share) => {
        const there = boundedNormalQuantile(share, mean, deviation, low, low + width);
        const back = -boundedNormalQuantile(1 - share, -mean, deviation, -low - width, -low);
        expect(Math.abs(there - back)).toBeLessThan(1e-7 * (1 + deviation + Math.abs(mean)));
      }),
      runs,
    );
  });
});

describe('the interval of a share', () => {
  test('holds the share, narrows with draws and widens with confidence', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 5000 }),
        between(0, 1),
        between(0.5, 0.99),
        (of, part, confidence) => {
          const successes = Math.round(part * of);
          const [low, high] = shareInterval(successes, of, confidence);
          expect(low).toBeLessThanOrEqual(successes / of);
          expect(high).toBeGreaterThanOrEqual(successes / of);
          const [from, to] = shareInterval(10 * successes, 10 * of, confidence);
          expect(to - from).toBeLessThan(high - low);
          const [lower, higher] = shareInterval(successes, of, confidence + 0.005);
          expect(higher - lower).toBeGreaterThan(high - low);
        },
      ),
      runs,
    );
  });
});

const sample = fc.integer({ min: 1, max: 60 }).chain((n) => {
  const column = fc.array(between(-5, 5), { minLength: n, maxLength: n }).map((v) => Float64Array.from(v));
  return fc.record({ columns: fc.array(column, { minLength: 1, maxLength: 5 }), result: column });
});

describe('shares of variance and rank correlation', () => {
  test('lie between 0 and 1, or −1 and 1, for any sample', () => {
    fc.assert(
      fc.property(sample, ({ columns, result }) => {
        for (const share of sharesOf(columns.map(evenly), result))
          expect(share >= 0 && share <= 1).toBe(true);
        for (const column of columns) {
          const rho = rankCorrelation(column, result);
          expect(rho >= -1 && rho <= 1).toBe(true);
          expect(rankCorrelation(result, column)).toBeCloseTo(rho, 12);
          expect(
            rankCorrelation(
              column.map((x) => -x),
              result,
            ),
          ).toBeCloseTo(-rho, 12);
        }
      }),
      runs,
    );
  });

  test('do not mind the unit of the result', () => {
    fc.assert(
      fc.property(seed, between(0.01, 100), between(-100, 100), (any, factor, offset) => {
        const points = new Float64Array(3 * 200);
        quasiRandom(3, any).fill(0, 200, points);
        const columns = [0, 1, 2].map((d) =>
          Float64Array.from({ length: 200 }, (_, i) => points[3 * i + d] as number),
        );
        const [x, y] = columns as [Float64Array, Float64Array];
        const result = x.map((u, i) => u * (1 + (y[i] as number)));
        const plain = sharesOf(columns, result);
        sharesOf(
          columns,
          result.map((v) => offset + factor * v),
        ).forEach((share, d) => {
          expect(share).toBeCloseTo(plain[d] as number, 8);
        });
      }),
      { ...runs, numRuns: 50 },
    );
  });
});

describe('bins', () => {
  test('hold every value once', () => {
    fc.assert(
      fc.property(
        fc.array(between(-1e4, 1e4), { minLength: 1, maxLength: 50 }),
        fc.integer({ min: 2, max: 40 }),
        (values, most) => {
          const edges = roundEdges(Math.min(...values), Math.max(...values), most);
          expect(edges.length).toBeLessThanOrEqual(most + 1);
          for (let i = 1; i < edges.length; i++) expect(edges[i]).toBeGreaterThan(edges[i - 1] as number);
          const counts = countInBins(values, edges);
          expect(counts.reduce((sum, count) => sum + count, 0)).toBe(values.length);
        },
      ),
      runs,
    );
  });
});
