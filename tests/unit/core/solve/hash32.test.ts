import { describe, expect, test } from 'vitest';
import { hash32, mix32 } from '../../../../src/core/solve/hash32.ts';

function onesIn(word: number): number {
  return (word.toString(2).match(/1/g) ?? []).length;
}

describe('mix32', () => {
  // MurmurHash3’s finaliser on 32 bits; a second implementation in Python with whole numbers.
  test.each([
    [0, 0],
    [1, 1364076727],
    [-1, 2180083513],
    [123456789, 3126909082],
  ])('of %i is %i', (value, mixed) => {
    expect(mix32(value)).toBe(mixed);
  });

  test('gives no two numbers the same', () => {
    expect(new Set(Array.from({ length: 50_000 }, (_, i) => mix32(i))).size).toBe(50_000);
  });
});

describe('hash32', () => {
  test('minds the order and the number of its parts', () => {
    const all = [hash32(1, 2), hash32(2, 1), hash32(1), hash32(1, 2, 0), hash32(0, 1, 2)];
    expect(new Set(all).size).toBe(all.length);
  });

  test('changes half of its bits with any bit of any part', () => {
    let changed = 0;
    for (let bit = 0; bit < 32; bit++) {
      for (let i = 0; i < 50; i++) {
        changed += onesIn((hash32(i, 7) ^ hash32(i ^ (1 << bit), 7)) >>> 0);
        changed += onesIn((hash32(7, i) ^ hash32(7, i ^ (1 << bit))) >>> 0);
      }
    }
    expect(Math.abs(changed / (2 * 32 * 50) - 16)).toBeLessThan(0.3);
  });
});
