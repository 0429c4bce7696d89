import { describe, expect, test } from 'vitest';
import { expectPublished, halfUnitOfLastDigit } from '../helpers/published.ts';

describe('a number as printed', () => {
  test.each([
    ['147', 0.5],
    ['12.65', 0.005],
    ['0.0342', 0.00005],
    ['-3.0', 0.05],
    ['−3.0', 0.05],
    ['1.8460e-5', 5e-10],
    ['2.31E4', 50],
    ['1e+3', 500],
  ])('%s stands for itself give or take half a unit of its last digit', (printed, half) => {
    expect(halfUnitOfLastDigit(printed)).toBeCloseTo(half, 15);
  });

  test.each(['', 'NaN', '1,5', '0x10', '1.', '12 W', '--1'])('refuses «%s»', (printed) => {
    expect(() => halfUnitOfLastDigit(printed)).toThrow('not a number as printed');
  });
});

describe('agreement with a printed number', () => {
  test('reaches to half a unit of the last digit on both sides', () => {
    expectPublished(0.03425, '0.0342');
    expectPublished(0.03415, '0.0342');
    expectPublished(1.84604e-5, '1.8460e-5');
    expectPublished(-3.04, '−3.0');
  });

  test.each([
    [0.034251, '0.0342'],
    [0.034149, '0.0342'],
    [1.84606e-5, '1.8460e-5'],
    [3.0, '-3.0'],
    [Number.NaN, '0.0'],
    [Number.POSITIVE_INFINITY, '1'],
  ])('ends there: %d is not %s', (actual, printed) => {
    expect(() => expectPublished(actual, printed)).toThrow();
  });

  test('is wider only as far as its reason says', () => {
    const slack = { within: 0.01, because: 'the source rounds its inputs' };
    expectPublished(101, '100', slack);
    expect(() => expectPublished(101.1, '100', slack)).toThrow('printed 100 to ±1.00');
    expect(() => expectPublished(100, '100', { within: 0.01, because: ' ' })).toThrow('reason');
  });
});
