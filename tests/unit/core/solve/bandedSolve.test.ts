import { describe, expect, test } from 'vitest';
import { solveBanded } from '../../../../src/core/solve/bandedSolve.ts';

describe('solveBanded', () => {
  test('solves a chain worked by hand: five equal conductances between 0 and 1', () => {
    const band = Float64Array.of(2, -1, 2, -1, 2, -1, 2, 0);
    const rhs = Float64Array.of(0, 0, 0, 1);
    expect(solveBanded(band, rhs, 4, 1)).toBe(true);
    [0.2, 0.4, 0.6, 0.8].forEach((x, i) => {
      expect(rhs[i]).toBeCloseTo(x, 14);
    });
  });

  test('solves a diagonal', () => {
    const rhs = Float64Array.of(2, 9);
    expect(solveBanded(Float64Array.of(4, 3), rhs, 2, 0)).toBe(true);
    expect([...rhs]).toEqual([0.5, 3]);
  });

  test('does not read what stands right of the last column', () => {
    const rhs = Float64Array.of(3, 3);
    expect(solveBanded(Float64Array.of(2, 1, 77, 2, Number.NaN, 77), rhs, 2, 2)).toBe(true);
    expect([...rhs]).toEqual([1, 1]);
  });

  test.each([
    ['singular', [1, -1, 1, 0]],
    ['indefinite', [1, 2, 1, 0]],
    ['not a number', [Number.NaN, 0, 1, 0]],
  ])('says no to a matrix that is %s', (_, band) => {
    expect(solveBanded(Float64Array.from(band), Float64Array.of(1, 1), 2, 1)).toBe(false);
  });
});
