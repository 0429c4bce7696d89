import { describe, expect, test } from 'vitest';
import { evaluatePchip, type Pchip, preparePchip } from '../../../../src/core/solve/pchip.ts';

const out = new Float64Array(2);

function at(curve: Pchip, x: number): { value: number; slope: number } {
  evaluatePchip(curve, x, out);
  return { value: out[0] as number, slope: out[1] as number };
}

// Expected numbers: scipy 1.10.1, PchipInterpolator, a second implementation of the same rules.
describe('preparePchip', () => {
  const curve = preparePchip([0, 1, 3, 3.5, 7], [2, 3, 3.5, 1, 4]);

  test('has the slopes of the second implementation, level at turning points', () => {
    const slopes = [1.25, 0.42857142857142855, 0, 0, 2.571428571428571];
    slopes.forEach((slope, i) => {
      expect(curve.slope[i]).toBeCloseTo(slope, 14);
    });
  });

  test.each([
    [0.5, 2.602678571428571],
    [2, 3.357142857142857],
    [3.2, 2.62],
    [5, 1.2361516034985423],
    [6.5, 2.889212827988338],
  ])('at %f is %f, as in the second implementation', (x, y) => {
    expect(at(curve, x).value).toBeCloseTo(y, 13);
  });

  test('holds an end slope to three chords where the next chord turns', () => {
    expect([...preparePchip([0, 1, 2], [0, 1, -20]).slope]).toEqual([3, 0, -32]);
  });

  test('holds an end slope level where it would point against its chord', () => {
    expect(preparePchip([0, 1, 2], [0, 1, 5]).slope[0]).toBe(0);
  });

  test('is the straight line through two points', () => {
    const line = preparePchip([1, 3], [10, 4]);
    for (const x of [0, 1, 2.5, 3, 8]) expect(at(line, x)).toEqual({ value: 13 - 3 * x, slope: -3 });
  });
});

describe('evaluatePchip', () => {
  const curve = preparePchip([0, 1, 3, 3.5, 7], [2, 3, 3.5, 1, 4]);

  test('goes through its points', () => {
    [0, 1, 3, 3.5, 7].forEach((x, i) => {
      expect(at(curve, x).value).toBeCloseTo([2, 3, 3.5, 1, 4][i] as number, 14);
    });
  });

  test('gives the derivative of its value', () => {
    const h = 1e-6;
    for (const x of [-2, 0.3, 0.999, 2.2, 3.3, 6.9, 12]) {
      const difference = (at(curve, x + h).value - at(curve, x - h).value) / (2 * h);
      expect(at(curve, x).slope).toBeCloseTo(difference, 6);
    }
  });

  test('goes straight on beyond its ends', () => {
    expect(at(curve, -2)).toEqual({ value: 2 - 2 * 1.25, slope: 1.25 });
    const end = curve.slope[4] as number;
    expect(at(curve, 9)).toEqual({ value: 4 + 2 * end, slope: end });
  });
});
