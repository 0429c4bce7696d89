import { describe, expect, test } from 'vitest';
import { chiSquareTail } from '../../../src/core/solve/chiSquareTail.ts';

// Source: Abramowitz & Stegun 1964, table 26.8, percentage points of χ²; from memory, to the digits given.
const points: readonly (readonly [degrees: number, chance: number, printed: string])[] = [
  [1, 0.05, '3.841'],
  [2, 0.05, '5.991'],
  [5, 0.05, '11.07'],
  [10, 0.05, '18.31'],
  [30, 0.05, '43.77'],
  [5, 0.01, '15.09'],
  [10, 0.95, '3.94'],
];

describe('percentage points of χ²', () => {
  test.each(points)('%i degrees, %f', (degrees, chance, printed) => {
    const half = 0.5 * 10 ** -(printed.split('.')[1]?.length ?? 0);
    const value = Number(printed);
    expect(chiSquareTail(value - half, degrees)).toBeGreaterThan(chance);
    expect(chiSquareTail(value + half, degrees)).toBeLessThan(chance);
  });
});
