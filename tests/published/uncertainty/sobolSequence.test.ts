import { describe, expect, test } from 'vitest';
import { quasiRandom } from '../../../src/core/solve/quasiRandom.ts';
import { sobolDirections } from '../../../src/core/solve/sobolDirections.ts';
import { published } from '../../helpers/published.ts';

/** A point of the sequence as published, not scrambled, in Gray-code order. */
function plainPoint(index: number, dimensions: number): number[] {
  const gray = index ^ (index >>> 1);
  return sobolDirections(dimensions).map((column) => {
    const word = column.reduce((sum, v, bit) => ((gray >>> bit) & 1 ? sum ^ v : sum), 0);
    return (word >>> 0) / 2 ** 32;
  });
}

/** The largest difference between two lists of numbers. */
const apart = (found: readonly (number | undefined)[], expected: readonly number[]) =>
  Math.max(...expected.map((value, i) => Math.abs((found[i] ?? Number.NaN) - value)));
const exactly = { off: 0, because: 'binary fractions, exact' };

describe('Sobol’s sequence with the numbers of Joe & Kuo 2008', () => {
  test('begins with these ten points in three dimensions', () => {
    const joeKuo = published({
      source: 'Joe & Kuo 2008, notes to their program',
      where: 'also scipy 1.17.1, qmc.Sobol with the same table',
      kind: 'from memory',
    });
    const found = Array.from({ length: 10 }, (_, i) => plainPoint(i, 3)).flat();
    const expected = [
      [0, 0, 0],
      [0.5, 0.5, 0.5],
      [0.75, 0.25, 0.25],
      [0.25, 0.75, 0.75],
      [0.375, 0.375, 0.625],
      [0.875, 0.875, 0.125],
      [0.625, 0.125, 0.875],
      [0.125, 0.625, 0.375],
      [0.1875, 0.3125, 0.9375],
      [0.6875, 0.8125, 0.4375],
    ].flat();
    joeKuo.says('largest difference of thirty coordinates', apart(found, expected), '0', exactly);
  });

  const scipy = published({
    source: 'Joe & Kuo 2008',
    where: 'Python library scipy 1.17.1, qmc.Sobol(161, scramble=False, bits=32)',
    kind: 'computed elsewhere',
  });
  test.each([
    [5, [0.875, 0.125, 0.125, 0.625, 0.125, 0.875]],
    [100, [0.2578125, 0.7734375, 0.6953125, 0.6484375, 0.0390625, 0.2734375]],
    [1000, [0.0966796875, 0.5185546875, 0.0693359375, 0.4462890625, 0.7685546875, 0.8583984375]],
    [4095, [0.941162109375, 0.334228515625, 0.246337890625, 0.553466796875, 0.344970703125, 0.688232421875]],
  ])('has its point %i there in dimensions 2, 3, 10, 64, 101 and 161', (index, expected) => {
    const point = plainPoint(index, 161);
    const found = [1, 2, 9, 63, 100, 160].map((d) => point[d]);
    scipy.says('largest difference of six coordinates', apart(found, expected), '0', exactly);
  });
});

/** Square of the centred L₂ discrepancy: how far a set of points is from even, Hickernell 1998, Math. Comp. 67, 299, (5.1). */
function centredDiscrepancy(points: Float64Array, dimensions: number): number {
  const n = points.length / dimensions;
  const off = points.map((u) => Math.abs(u - 0.5));
  let [single, pairs] = [0, 0];
  for (let i = 0; i < n; i++) {
    let one = 1;
    for (let d = 0; d < dimensions; d++) {
      const a = off[i * dimensions + d] as number;
      one *= 1 + 0.5 * a - 0.5 * a * a;
    }
    single += one;
    for (let j = 0; j < n; j++) {
      let two = 1;
      for (let d = 0; d < dimensions; d++) {
        const [p, q] = [i * dimensions + d, j * dimensions + d];
        const apart = Math.abs((points[p] as number) - (points[q] as number));
        two *= 1 + 0.5 * ((off[p] as number) + (off[q] as number) - apart);
      }
      pairs += two;
    }
  }
  return (13 / 12) ** dimensions - (2 / n) * single + pairs / (n * n);
}

describe('evenness', () => {
  // Hickernell 1998: an independent random sample has the mean ((5/4)ᵈ − (13/12)ᵈ)/n.
  test.each([
    [2, 512, 100],
    [5, 512, 20],
    [10, 512, 4],
  ])(
    'in %i dimensions, %i points are far evener than random ones: %i times and more',
    (dimensions, count, times) => {
      const points = new Float64Array(dimensions * count);
      quasiRandom(dimensions, 4).fill(0, count, points);
      const random = ((5 / 4) ** dimensions - (13 / 12) ** dimensions) / count;
      expect(centredDiscrepancy(points, dimensions)).toBeLessThan(random / times);
    },
  );

  test('the pseudo-random dimensions beyond the table are as even as random ones', () => {
    const points = new Float64Array(165 * 512);
    quasiRandom(165, 4).fill(0, 512, points);
    const beyond = Float64Array.from(
      { length: 4 * 512 },
      (_, k) => points[165 * (k >> 2) + 161 + (k & 3)] as number,
    );
    const random = ((5 / 4) ** 4 - (13 / 12) ** 4) / 512;
    expect(centredDiscrepancy(beyond, 4)).toBeGreaterThan(random / 3);
    expect(centredDiscrepancy(beyond, 4)).toBeLessThan(random * 3);
  });
});

describe('integrals whose value is known to be 1', () => {
  const mean = (f: (point: Float64Array) => number, dimensions: number, count: number, seed: number) => {
    const points = new Float64Array(dimensions * count);
    quasiRandom(dimensions, seed).fill(0, count, points);
    let sum = 0;
    for (let i = 0; i < count; i++) sum += f(points.subarray(i * dimensions, (i + 1) * dimensions));
    return sum / count;
  };
  const seeds = [1, 2, 3, 4, 5, 6, 7, 8];
  const error = (f: (point: Float64Array) => number, dimensions: number, count: number) =>
    Math.sqrt(
      seeds.reduce((sum, seed) => sum + (mean(f, dimensions, count, seed) - 1) ** 2, 0) / seeds.length,
    );

  // Product of |4u − 2|: Sobol’s g function with all a = 0 (Davis & Rabinowitz 1984); deviation √((4/3)ᵈ − 1).
  const g = (point: Float64Array) => point.reduce((product, u) => product * Math.abs(4 * u - 2), 1);
  test.each([
    [2, 60],
    [5, 6],
  ])(
    'product of |4u − 2| in %i dimensions, 4,096 points: %i times the precision of random draws',
    (d, times) => {
      expect(error(g, d, 4096)).toBeLessThan(Math.sqrt(((4 / 3) ** d - 1) / 4096) / times);
    },
  );

  // Product of 1 + (u − ½)/k²: most of it is in the first few inputs, as in a box with parts of many kinds.
  const fading = (point: Float64Array) =>
    point.reduce((product, u, k) => product * (1 + (u - 0.5) / (k + 1) ** 2), 1);
  test('a smooth one that fades over 200 inputs, 1,024 points: 30 times the precision of random draws', () => {
    const variance =
      Array.from({ length: 200 }, (_, k) => 1 + 1 / (12 * (k + 1) ** 4)).reduce((p, x) => p * x, 1) - 1;
    expect(error(fading, 200, 1024)).toBeLessThan(Math.sqrt(variance / 1024) / 30);
  });
});
