import { describe, expect, test } from 'vitest';
import { quasiRandom } from '../../../../src/core/solve/quasiRandom.ts';

/** One dimension after the other. */
function columns(dimensions: number, count: number, seed = 1, from = 0): Float64Array[] {
  const points = new Float64Array(dimensions * count);
  quasiRandom(dimensions, seed).fill(from, count, points);
  return Array.from({ length: dimensions }, (_, d) =>
    Float64Array.from({ length: count }, (_, i) => points[i * dimensions + d] as number),
  );
}

function correlation(a: Float64Array, b: Float64Array): number {
  return (12 * a.reduce((sum, u, i) => sum + (u - 0.5) * ((b[i] as number) - 0.5), 0)) / a.length;
}

describe('quasiRandom', () => {
  test('repeats to the last bit with the same seed, and only then', () => {
    expect(columns(170, 5, 42)).toEqual(columns(170, 5, 42));
    for (const d of [0, 1, 160, 161, 169]) {
      expect(columns(170, 5, 42)[d]).not.toEqual(columns(170, 5, 43)[d]);
    }
  });

  test('gives any range by itself, the same as within a longer one', () => {
    const all = new Float64Array(165 * 300);
    const draws = quasiRandom(165, 7);
    draws.fill(0, 300, all);
    for (const [from, count] of [
      [0, 300],
      [1, 1],
      [128, 64],
      [137, 100],
      [299, 1],
    ] as const) {
      const some = new Float64Array(165 * count);
      draws.fill(from, count, some);
      expect(some).toEqual(all.slice(165 * from, 165 * (from + count)));
    }
  });

  test('goes on to the last of 2³² points', () => {
    const both = new Float64Array(2 * 2);
    quasiRandom(2, 3).fill(2 ** 32 - 2, 2, both);
    const last = new Float64Array(2);
    quasiRandom(2, 3).fill(2 ** 32 - 1, 1, last);
    expect(both.slice(2)).toEqual(last);
  });

  test('is never 0 or 1', () => {
    for (const column of columns(200, 2048)) {
      expect(Math.min(...column)).toBeGreaterThanOrEqual(2 ** -33);
      expect(Math.max(...column)).toBeLessThanOrEqual(1 - 2 ** -33);
    }
  });

  test('of no dimensions or no points leaves everything as it is', () => {
    const out = Float64Array.of(7);
    quasiRandom(0, 1).fill(0, 5, out);
    quasiRandom(3, 1).fill(5, 0, out);
    expect(out).toEqual(Float64Array.of(7));
  });

  test.each([1, 2, 12345, -1])(
    'seed %i: every 256 points have one in each 256th, in each of 161 dimensions',
    (seed) => {
      for (const from of [0, 256, 768]) {
        for (const column of columns(161, 256, seed, from)) {
          expect(new Set([...column].map((u) => Math.floor(256 * u))).size).toBe(256);
        }
      }
    },
  );

  test('the first two dimensions are a (0, 8, 2)-net: one point in each box of area 1/256, whatever its shape', () => {
    const [a, b] = columns(2, 256, 99, 512) as [Float64Array, Float64Array];
    for (let k = 0; k <= 8; k++) {
      const box = (i: number) =>
        `${Math.floor(2 ** k * (a[i] as number))} ${Math.floor(2 ** (8 - k) * (b[i] as number))}`;
      expect(new Set(Array.from(a, (_, i) => box(i))).size, `2^${k} columns`).toBe(256);
    }
  });

  // Half of the boxes of a plain random sample would be wrong by a point or more.
  test('any two of the first twelve dimensions have 1,024 points even on an 8 by 8 board', () => {
    const drawn = columns(12, 1024, 5);
    for (let d = 0; d < 12; d++) {
      for (let e = 0; e < d; e++) {
        const board = new Float64Array(64);
        drawn[d]?.forEach((u, i) => {
          const cell = 8 * Math.floor(8 * u) + Math.floor(8 * (drawn[e]?.[i] as number));
          board[cell] = (board[cell] as number) + 1;
        });
        expect([...board], `${d} and ${e}`).toEqual(Array(64).fill(16));
      }
    }
  });

  test('beyond the table is even, and tells nothing about other dimensions or about itself a draw later', () => {
    const drawn = columns(175, 4096).slice(159);
    // 126 pairs and more: five standard errors of a correlation.
    const chance = 5 / Math.sqrt(4096);
    drawn.forEach((column, d) => {
      expect(Math.abs(column.reduce((sum, u) => sum + u - 0.5, 0) / 4096)).toBeLessThan(
        chance / Math.sqrt(12),
      );
      for (const other of drawn.slice(0, d))
        expect(Math.abs(correlation(column, other))).toBeLessThan(chance);
      if (d > 1) expect(Math.abs(correlation(column.slice(1), column.slice(0, -1)))).toBeLessThan(chance);
    });
  });

  test('with many seeds every point is even by itself: a mean has no bias', () => {
    const first = Array.from({ length: 4000 }, (_, seed) =>
      columns(2, 1, seed, 5).map((column) => column[0] as number),
    );
    for (const d of [0, 1]) {
      const mean = first.reduce((sum, point) => sum + (point[d] as number), 0) / 4000;
      expect(Math.abs(mean - 0.5)).toBeLessThan(4 / Math.sqrt(12 * 4000));
    }
  });
});
