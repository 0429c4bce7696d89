import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solveBanded } from '../../src/core/solve/bandedSolve.ts';
import { brentRoot } from '../../src/core/solve/brentRoot.ts';
import { solveDense } from '../../src/core/solve/denseSolve.ts';
import { normalCdf, normalQuantile } from '../../src/core/solve/normal.ts';
import { evaluatePchip, preparePchip } from '../../src/core/solve/pchip.ts';
import { quantile } from '../../src/core/solve/quantile.ts';
import { symmetricEigen } from '../../src/core/solve/symmetricEigen.ts';

const runs = { seed: 20261125, numRuns: 300 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const knots = fc
  .array(fc.tuple(between(0.01, 5), between(-50, 50)), { minLength: 2, maxLength: 9 })
  .map((steps) => {
    let x = 0;
    const xs = steps.map(([step]) => {
      x += step;
      return x;
    });
    return { xs, ys: steps.map(([, y]) => y) };
  });

describe('monotone interpolation', () => {
  test('never leaves the range of two neighbouring points, nor turns between them', () => {
    fc.assert(
      fc.property(knots, ({ xs, ys }) => {
        const curve = preparePchip(xs, ys);
        const out = new Float64Array(2);
        for (let i = 1; i < xs.length; i++) {
          const [x0, x1, y0, y1] = [xs[i - 1], xs[i], ys[i - 1], ys[i]] as [number, number, number, number];
          const direction = Math.sign(y1 - y0);
          let before = y0;
          for (let s = 1; s <= 20; s++) {
            evaluatePchip(curve, x0 + ((x1 - x0) * s) / 20, out);
            expect(((out[0] as number) - before) * direction).toBeGreaterThanOrEqual(-1e-12 * 50);
            before = out[0] as number;
          }
          expect(Math.abs(before - y1)).toBeLessThanOrEqual(1e-12 * 50);
        }
      }),
      runs,
    );
  });

  test('mirrors with its points', () => {
    fc.assert(
      fc.property(knots, between(-1, 50), ({ xs, ys }, x) => {
        const [there, back] = [new Float64Array(2), new Float64Array(2)];
        evaluatePchip(preparePchip(xs, ys), x, there);
        evaluatePchip(preparePchip(xs.map((v) => -v).reverse(), [...ys].reverse()), -x, back);
        const size = 50 + Math.abs(there[0] as number);
        expect(Math.abs((there[0] as number) - (back[0] as number))).toBeLessThan(1e-9 * size);
      }),
      runs,
    );
  });
});

describe('Brent’s roots', () => {
  test('are the roots of any rising function that has one inside', () => {
    fc.assert(
      fc.property(
        between(-10, 10),
        between(0, 20),
        between(0.01, 20),
        between(0, 5),
        (root, left, right, bend) => {
          const f = (x: number) =>
            (x - root) * (1 + bend * Math.abs(x - root)) + bend * Math.tanh(9 * (x - root));
          const found = brentRoot(f, root - left, root + right, 1e-12);
          expect(found.ok).toBe(true);
          if (found.ok) expect(Math.abs(found.root - root)).toBeLessThan(2e-12 + 1e-15 * Math.abs(root));
        },
      ),
      runs,
    );
  });
});

/** A band that is heavier on its diagonal than beside it: every heat network is. */
const system = fc
  .record({ n: fc.integer({ min: 1, max: 12 }), width: fc.integer({ min: 0, max: 4 }) })
  .chain(({ n, width }) =>
    fc.record({
      n: fc.constant(n),
      width: fc.constant(Math.min(width, n - 1)),
      off: fc.array(between(0, 10), { minLength: n * n, maxLength: n * n }),
      extra: fc.array(between(0.01, 5), { minLength: n, maxLength: n }),
      rhs: fc.array(between(-10, 10), { minLength: n, maxLength: n }),
    }),
  )
  .map(({ n, width, off, extra, rhs }) => {
    const full = new Float64Array(n * n);
    for (let i = 0; i < n; i++) full[i * n + i] = extra[i] as number;
    for (let i = 0; i < n; i++) {
      for (let j = i + 1; j < n && j <= i + width; j++) {
        const g = off[i * n + j] as number;
        full[i * n + j] = -g;
        full[j * n + i] = -g;
        full[i * n + i] = (full[i * n + i] as number) + g;
        full[j * n + j] = (full[j * n + j] as number) + g;
      }
    }
    return { n, width, full, rhs: Float64Array.from(rhs) };
  });

function bandOf({ n, width, full }: { n: number; width: number; full: Float64Array }): Float64Array {
  const band = new Float64Array(n * (width + 1));
  for (let i = 0; i < n; i++) {
    for (let k = 0; k <= width && i + k < n; k++) band[i * (width + 1) + k] = full[i * n + i + k] as number;
  }
  return band;
}

describe('linear systems', () => {
  test('come out the same by band and by rows, and put back they give the right-hand side', () => {
    fc.assert(
      fc.property(system, (given) => {
        const { n, width, full, rhs } = given;
        const [byBand, byRows] = [rhs.slice(), rhs.slice()];
        expect(solveBanded(bandOf(given), byBand, n, width)).toBe(true);
        expect(solveDense(full.slice(), byRows, n)).toBe(true);
        for (let i = 0; i < n; i++) {
          let left = 0;
          let size = 0;
          for (let j = 0; j < n; j++) {
            const part = (full[i * n + j] as number) * (byBand[j] as number);
            left += part;
            size += Math.abs(part);
          }
          const rounding = 1e-12 * (1 + size);
          expect(Math.abs(left - (rhs[i] as number))).toBeLessThan(rounding);
          expect(Math.abs((byBand[i] as number) - (byRows[i] as number))).toBeLessThan(1e-9 * (1 + size));
        }
      }),
      runs,
    );
  });

  test('fall into eigenvectors that put the matrix together again', () => {
    fc.assert(
      fc.property(system, ({ n, full }) => {
        const { values, vectors } = symmetricEigen(full, n);
        for (let i = 0; i < n; i++) {
          for (let j = 0; j < n; j++) {
            let sum = 0;
            for (let k = 0; k < n; k++) {
              sum += (vectors[i * n + k] as number) * (values[k] as number) * (vectors[j * n + k] as number);
            }
            expect(Math.abs(sum - (full[i * n + j] as number))).toBeLessThan(1e-10);
          }
        }
        for (const value of values) expect(value).toBeGreaterThan(0);
      }),
      runs,
    );
  });
});

describe('distributions', () => {
  test('the normal quantile rises with the share and undoes the distribution function', () => {
    fc.assert(
      fc.property(between(1e-12, 0.999999), between(1e-9, 0.1), (share, more) => {
        const z = normalQuantile(share);
        expect(Math.abs(normalCdf(z) / share - 1)).toBeLessThan(1e-10);
        expect(normalQuantile(Math.min(share * (1 + more), 1 - 1e-9))).toBeGreaterThan(z - 1e-12);
      }),
      runs,
    );
  });

  test('a sample’s quantile rises with the share and stays within the sample', () => {
    fc.assert(
      fc.property(
        fc.array(between(-5, 5), { minLength: 1, maxLength: 30 }),
        between(0, 1),
        between(0, 1),
        (values, a, b) => {
          const sorted = Float64Array.from(values).sort();
          const [low, high] = [quantile(sorted, Math.min(a, b)), quantile(sorted, Math.max(a, b))];
          expect(low).toBeLessThanOrEqual(high + 1e-12);
          expect(low).toBeGreaterThanOrEqual(sorted[0] as number);
          expect(high).toBeLessThanOrEqual((sorted.at(-1) as number) + 1e-12);
        },
      ),
      runs,
    );
  });
});
