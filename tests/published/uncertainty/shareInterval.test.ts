import { describe, test } from 'vitest';
import { shareInterval } from '../../../src/core/solve/shareInterval.ts';
import { expectPublished } from '../../helpers/published.ts';

// Newcombe 1998, Statistics in Medicine 17, 857–872, Table I, method 3: the score method of Wilson 1927, 95 % (from
// memory; the same to twelve digits in scipy 1.17.1).
describe('score interval of a share', () => {
  test.each([
    [81, 263, '0.2553', '0.3662'],
    [15, 148, '0.0624', '0.1605'],
    [0, 20, '0.0000', '0.1611'],
    [1, 29, '0.0061', '0.1718'],
  ])('%i of %i lies between %s and %s', (successes, of, low, high) => {
    const interval = shareInterval(successes, of, 0.95);
    expectPublished(interval[0], low);
    expectPublished(interval[1], high);
  });
});
