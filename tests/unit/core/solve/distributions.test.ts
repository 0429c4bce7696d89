import { describe, expect, test } from 'vitest';
import {
  boundedLognormalQuantile,
  boundedNormalQuantile,
  triangularQuantile,
  uniformQuantile,
} from '../../../../src/core/solve/distributions.ts';

// Expected numbers unless they are obvious: scipy 1.17.1 (triang, truncnorm, lognorm), a second implementation.
describe('uniformQuantile', () => {
  test('goes straight from one end to the other', () => {
    expect([0, 0.25, 1].map((share) => uniformQuantile(share, 2, 10))).toEqual([2, 4, 10]);
    expect(uniformQuantile(0.3, 5, 5)).toBe(5);
  });
});

describe('triangularQuantile', () => {
  test.each([
    [0.05, 2],
    [0.2, 3],
    [0.5, 4.675444679663241],
    [0.95, 9],
  ])('from 1 by 3 to 11, at %f, is %f', (share, expected) => {
    expect(triangularQuantile(share, 1, 3, 11)).toBeCloseTo(expected, 13);
  });

  test('has its ends, also where it peaks at one of them, and a peak outside is held', () => {
    expect([0, 1].map((share) => triangularQuantile(share, 1, 3, 11))).toEqual([1, 11]);
    expect([0, 0.75, 1].map((share) => triangularQuantile(share, 0, 0, 2))).toEqual([0, 1, 2]);
    expect([0, 0.25, 1].map((share) => triangularQuantile(share, 0, 9, 2))).toEqual([0, 1, 2]);
    expect(triangularQuantile(0.4, 6, 6, 6)).toBe(6);
  });
});

describe('boundedNormalQuantile', () => {
  test('without bounds is the normal distribution', () => {
    expect(boundedNormalQuantile(0.95, 10, 2)).toBeCloseTo(10 + 2 * 1.6448536269514722, 12);
  });

  test.each([
    [0.01, 0.03533054885016562],
    [0.3, 0.9796163311741375],
    [0.9, 3.2596714362576424],
  ])('1 ± 2 kept between 0 and 4, at %f, is %f', (share, expected) => {
    expect(boundedNormalQuantile(share, 1, 2, 0, 4)).toBeCloseTo(expected, 12);
  });

  test.each([
    [0.01, 0.012533469508069276],
    [0.5, 0.6744897501960817],
    [0.99, 2.575829303548901],
  ])('the upper half, at %f, is %f', (share, expected) => {
    expect(boundedNormalQuantile(share, 0, 1, 0)).toBeCloseTo(expected, 11);
  });

  test.each([
    [0.01, 5.001930735668297],
    [0.5, 5.131371763283919],
    [0.99, 5.775193389616561],
  ])('far up in the tail, between 5 and 6 deviations, at %f, is %f', (share, expected) => {
    expect(boundedNormalQuantile(share, 0, 1, 5, 6)).toBeCloseTo(expected, 9);
    expect(boundedNormalQuantile(1 - share, 0, 1, -6, -5)).toBeCloseTo(-expected, 9);
  });

  test('beyond all tails gives a bound, and without deviation the mean within the bounds', () => {
    expect(boundedNormalQuantile(0.5, 0, 1, 50, 60)).toBe(50);
    expect(boundedNormalQuantile(0.5, 0, 1, -60, -50)).toBe(-50);
    expect([boundedNormalQuantile(0.1, 3, 0), boundedNormalQuantile(0.1, 3, 0, 4, 5)]).toEqual([3, 4]);
  });
});

describe('boundedLognormalQuantile', () => {
  test.each([
    [0.05, 1.2337315543541651],
    [0.5, 2.683281572999748],
    [0.95, 5.835953514027662],
  ])('of mean 3 and variation 0.5, at %f, is %f', (share, expected) => {
    expect(boundedLognormalQuantile(share, 3, 0.5)).toBeCloseTo(expected, 12);
  });

  test.each([
    [0.05, 2.0983963011233056],
    [0.5, 3.066817104374229],
    [0.95, 5.233095795984562],
  ])('the same kept between 2 and 6, at %f, is %f', (share, expected) => {
    expect(boundedLognormalQuantile(share, 3, 0.5, 2, 6)).toBeCloseTo(expected, 12);
  });

  test('without variation is its mean, and a mean that no lognormal has comes back within the bounds', () => {
    expect(boundedLognormalQuantile(0.9, 3, 0)).toBe(3);
    expect(boundedLognormalQuantile(0.9, 0, 0.2)).toBe(0);
    expect(boundedLognormalQuantile(0.9, -2, 0.2)).toBe(0);
  });

  test('is finite at both ends', () => {
    for (const share of [0, 1]) {
      expect(boundedLognormalQuantile(share, 3, 40)).toBeGreaterThanOrEqual(0);
      expect(boundedLognormalQuantile(share, 3, 40)).toBeLessThan(Number.POSITIVE_INFINITY);
    }
  });
});
