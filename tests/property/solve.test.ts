import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solveBanded } from '../../src/core/solve/bandedSolve.ts';
import { brentRoot } from '../../src/core/solve/brentRoot.ts';
import { solveDense } from '../../src/core/solve/denseSolve.ts';
import { normalCdf, normalQuantile } from '../../src/core/solve/normal.ts';
import { evaluatePchip, preparePchip } from '../../src/core/solve/pchip.ts';
import { quantile } from '../../src/core/solve/quantile.ts';
import { signScanRoots } from '../../src/core/solve/signScanRoots.ts';
import { symmetricEigen } from '../../src/core/solve/symmetricEigen.ts';

const runs = { seed: 20261125, numRuns: 300 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const numbers = (length: number, min: number, max: number) =>
  fc.array(between(min, max), { minLength: length, maxLength: length });

/** Points with strictly rising x, up to a thousandfold uneven. */
const points = fc.integer({ min: 2, max: 9 }).chain((n) =>
  fc.tuple(numbers(n, 1e-3, 1), numbers(n, -100, 100)).map(([steps, ys]) => {
    let x = 0;
    return { xs: steps.map((step) => (x += step)), ys };
  }),
);

/** A symmetric positive definite matrix: conductances between nodes at most `reach` apart, and one to the ground each. */
const network = fc
  .record({ n: fc.integer({ min: 1, max: 12 }), reach: fc.integer({ min: 0, max: 4 }) })
  .chain(({ n, reach }) =>
    fc.record({
      n: fc.constant(n),
      reach: fc.constant(reach),
      links: numbers(n * reach, 0, 1e3),
      ground: numbers(n, 1e-3, 10),
      heat: numbers(n, -10, 10),
    }),
  )
  .map(({ n, reach, links, ground, heat }) => {
    const matrix = new Float64Array(n * n);
    const add = (i: number, j: number, value: number) => {
      matrix[i * n + j] = (matrix[i * n + j] as number) + value;
    };
    ground.forEach((g, i) => {
      add(i, i, g);
    });
    links.forEach((g, index) => {
      const i = Math.floor(index / reach);
      const j = i + 1 + (index % reach);
      if (j >= n) return;
      add(i, i, g);
      add(j, j, g);
      add(i, j, -g);
      add(j, i, -g);
    });
    return { n, reach, matrix, heat: Float64Array.from(heat) };
  });

const times = (matrix: Float64Array, x: Float64Array, n: number) =>
  Array.from({ length: n }, (_, i) =>
    x.reduce((sum, value, j) => sum + (matrix[i * n + j] as number) * value, 0),
  );

describe('monotone interpolation', () => {
  const out = new Float64Array(2);

  test('never leaves the range of its two neighbours', () => {
    fc.assert(
      fc.property(points, between(0, 1), ({ xs, ys }, share) => {
        const curve = preparePchip(xs, ys);
        for (let i = 1; i < xs.length; i++) {
          const [x0, x1] = [xs[i - 1] as number, xs[i] as number];
          const [y0, y1] = [ys[i - 1] as number, ys[i] as number];
          evaluatePchip(curve, x0 + share * (x1 - x0), out);
          expect(out[0] as number).toBeGreaterThanOrEqual(Math.min(y0, y1) - 1e-11);
          expect(out[0] as number).toBeLessThanOrEqual(Math.max(y0, y1) + 1e-11);
          // A slope against the chord would be a bump; rounding scales with the chord.
          expect((out[1] as number) * (y1 - y0)).toBeGreaterThanOrEqual(
            (-1e-9 * (y1 - y0) ** 2) / (x1 - x0) - 1e-12,
          );
        }
      }),
      runs,
    );
  });

  test('has one value and one slope on both sides of every point', () => {
    fc.assert(
      fc.property(points, ({ xs, ys }) => {
        const curve = preparePchip(xs, ys);
        xs.forEach((x, i) => {
          const slope = curve.slope[i] as number;
          for (const side of [-1e-9, 1e-9]) {
            evaluatePchip(curve, x + side, out);
            expect(Math.abs((out[0] as number) - (ys[i] as number))).toBeLessThan(1e-3);
            // Curvature is at most about 6·200/(1e-3)², so the slope moves by 1.2 in 1e-9.
            expect(Math.abs((out[1] as number) - slope)).toBeLessThan(2.5);
          }
        });
      }),
      runs,
    );
  });
});

describe('roots', () => {
  test('of a rising cubic is where it should be, from any bracket', () => {
    fc.assert(
      fc.property(
        between(-50, 50),
        between(1e-3, 100),
        between(1e-3, 100),
        between(0, 5),
        (root, left, right, bend) => {
          const found = brentRoot(
            (x) => (x - root) * (1 + bend * (x - root) ** 2),
            root - left,
            root + right,
            1e-12,
          );
          expect(found.ok && Math.abs(found.root - root)).toBeLessThan(1e-11);
        },
      ),
      runs,
    );
  });

  test('of a product of factors are all found, rising and falling in turn', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 1, max: 99 }), { minLength: 1, maxLength: 6 }),
        (places) => {
          const roots = places.map((place) => place + 0.3).sort((a, b) => a - b);
          const f = (x: number) => roots.reduce((product, root) => product * ((x - root) / 10), 1);
          const found = signScanRoots(f, 0, 100, 100, 1e-12);
          expect(found).toHaveLength(roots.length);
          found.forEach(({ root, rising }, i) => {
            expect(root).toBeCloseTo(roots[i] as number, 10);
            expect(rising).toBe((roots.length - i) % 2 === 1);
          });
        },
      ),
      runs,
    );
  });
});

describe('linear systems', () => {
  test('dense: the answer put back gives the right side', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 8 }).chain((n) => fc.tuple(numbers(n * n, -1, 1), numbers(n, -10, 10))),
        ([values, heat]) => {
          const n = heat.length;
          const matrix = Float64Array.from(values);
          // A strong diagonal in a shuffled place: well conditioned, but only with exchange of rows.
          for (let i = 0; i < n; i++) matrix[i * n + ((i + 1) % n)] = 2 * n;
          const x = Float64Array.from(heat);
          expect(solveDense(matrix.slice(), x, n)).toBe(true);
          times(matrix, x, n).forEach((value, i) => {
            expect(Math.abs(value - (heat[i] as number))).toBeLessThan(1e-11);
          });
        },
      ),
      runs,
    );
  });

  test('banded: the same answer as dense, and the heat balance closes', () => {
    fc.assert(
      fc.property(network, ({ n, reach, matrix, heat }) => {
        const band = new Float64Array(n * (reach + 1));
        for (let i = 0; i < n; i++) {
          for (let j = 0; j <= reach && i + j < n; j++)
            band[i * (reach + 1) + j] = matrix[i * n + i + j] as number;
        }
        const x = heat.slice();
        const dense = heat.slice();
        expect(solveBanded(band, x, n, reach)).toBe(true);
        expect(solveDense(matrix.slice(), dense, n)).toBe(true);
        const size = Math.max(1, ...dense.map(Math.abs));
        x.forEach((value, i) => {
          // Conductances span 1e6, so ten of sixteen digits are left.
          expect(Math.abs(value - (dense[i] as number))).toBeLessThan(1e-9 * size);
        });
      }),
      runs,
    );
  });

  test('eigen: vectors are orthonormal and put the matrix together again', () => {
    fc.assert(
      fc.property(network, ({ n, matrix }) => {
        const { values, vectors } = symmetricEigen(matrix, n);
        const v = (row: number, column: number) => vectors[row * n + column] as number;
        const size = Math.max(...matrix.map(Math.abs));
        for (let i = 0; i < n; i++) {
          expect(values[i] as number).toBeGreaterThan(0);
          for (let j = 0; j < n; j++) {
            let inner = 0;
            let sum = 0;
            for (let k = 0; k < n; k++) {
              inner += v(k, i) * v(k, j);
              sum += (values[k] as number) * v(i, k) * v(j, k);
            }
            expect(Math.abs(inner - (i === j ? 1 : 0))).toBeLessThan(1e-13 * (1 + n));
            expect(Math.abs(sum - (matrix[i * n + j] as number))).toBeLessThan(1e-13 * (1 + n) * size);
          }
        }
      }),
      runs,
    );
  });
});

describe('distributions', () => {
  test('the normal quantile undoes the distribution function', () => {
    fc.assert(
      fc.property(between(-30, 5), (z) => {
        // Above 5 the share itself has too few digits left of one.
        expect(normalQuantile(normalCdf(z))).toBeCloseTo(z, 9);
      }),
      runs,
    );
  });

  test('it is odd about one half and rises', () => {
    fc.assert(
      fc.property(between(1e-9, 0.5), between(1.0001, 2), (share, more) => {
        expect(normalQuantile(1 - share)).toBeCloseTo(-normalQuantile(1 - (1 - share)), 12);
        expect(normalQuantile(Math.min(share * more, 0.9999999))).toBeGreaterThan(normalQuantile(share));
      }),
      runs,
    );
  });

  test('a quantile lies in its sample and rises with its share', () => {
    fc.assert(
      fc.property(
        fc.array(between(-1e6, 1e6), { minLength: 1, maxLength: 40 }),
        between(0, 1),
        between(0, 1),
        (values, one, other) => {
          const sorted = values.sort((a, b) => a - b);
          const low = quantile(sorted, Math.min(one, other));
          const high = quantile(sorted, Math.max(one, other));
          expect(high).toBeGreaterThanOrEqual(low - 1e-9);
          expect(low).toBeGreaterThanOrEqual(sorted[0] as number);
          expect(high).toBeLessThanOrEqual((sorted.at(-1) as number) + 1e-9);
        },
      ),
      runs,
    );
  });
});
