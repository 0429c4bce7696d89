import { describe, expect, test } from 'vitest';
import { joeKuo2008 } from '../../../../src/core/solve/joeKuo2008.ts';
import { sobolDirections } from '../../../../src/core/solve/sobolDirections.ts';

const table = joeKuo2008
  .trim()
  .split('\n')
  .map((row) => row.split(' ').map(Number));

/** First binary places of the first `many` direction numbers, by the recurrence in whole numbers of any length. */
function firstPlaces([polynomial = 1, ...start]: readonly number[], many: number): boolean[] {
  const degree = start.length;
  const m = start.map(BigInt);
  for (let i = degree; i < many; i++) {
    const back = m[i - degree] as bigint;
    let next = back ^ (back << BigInt(degree));
    for (let k = 1; k < degree; k++) {
      if ((polynomial >> (degree - k)) & 1) next ^= (m[i - k] as bigint) << BigInt(k);
    }
    m.push(next);
  }
  return m.slice(0, many).map((value, i) => ((value >> BigInt(i)) & 1n) === 1n);
}

describe('the table of Joe & Kuo', () => {
  test('has a polynomial and as many odd first numbers as its degree in every line, none too large', () => {
    for (const [polynomial = 0, ...start] of table) {
      expect(start).toHaveLength(Math.floor(Math.log2(polynomial)));
      start.forEach((m, i) => {
        expect(m % 2).toBe(1);
        expect(m).toBeLessThan(2 ** (i + 1));
      });
    }
  });

  // There are φ(2ᵏ − 1)/k primitive polynomials of degree k over GF(2).
  test('uses every primitive polynomial up to the tenth degree once', () => {
    const ofDegree = (k: number) => table.filter(([p = 0]) => Math.floor(Math.log2(p)) === k).length;
    const degrees = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
    expect(degrees.map(ofDegree)).toEqual([1, 1, 2, 2, 6, 6, 18, 16, 48, 60]);
    expect(new Set(table.map(([polynomial]) => polynomial)).size).toBe(160);
  });

  // Sobol’s property A: of 2ᵈ points in d dimensions one lies in every half-by-half box. Joe & Kuo searched for it.
  test('has property A in every number of dimensions: no digit of it is mistyped', () => {
    const many = table.length + 1;
    const rows = [
      Array.from({ length: many }, (_, i) => i === 0),
      ...table.map((row) => firstPlaces(row, many)),
    ];
    const bits = rows.map((row) => row.reduce((word, place, i) => word | (place ? 1n << BigInt(i) : 0n), 0n));
    for (const dimensions of [2, 3, 10, 37, 80, 120, many]) {
      const reduced: bigint[] = [];
      for (const word of bits.slice(0, dimensions)) {
        let left = word & ((1n << BigInt(dimensions)) - 1n);
        for (const base of reduced) if ((left ^ base) < left) left ^= base;
        if (left > 0n) reduced.push(left);
        reduced.sort((a, b) => (a < b ? 1 : -1));
      }
      expect(reduced, `${dimensions} dimensions`).toHaveLength(dimensions);
    }
  });
});

describe('sobolDirections', () => {
  test('halve and halve in the first dimension, and begin with the table in the others', () => {
    const [first, second, third] = sobolDirections(3);
    expect([...(first as Uint32Array)].map((v, i) => v * 2 ** (i + 1 - 32))).toEqual(Array(32).fill(1));
    expect([...(second as Uint32Array).slice(0, 4)].map((v) => v / 2 ** 32)).toEqual([
      0.5, 0.75, 0.625, 0.9375,
    ]);
    expect([...(third as Uint32Array).slice(0, 4)].map((v) => v / 2 ** 32)).toEqual([
      0.5, 0.75, 0.375, 0.5625,
    ]);
  });

  test('end with the table, and begin with nothing', () => {
    expect([0, 1, 2, 161, 300].map((n) => sobolDirections(n).length)).toEqual([0, 1, 2, 161, 161]);
  });
});
