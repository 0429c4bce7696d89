import { describe, test } from 'vitest';
import { shareInterval } from '../../../src/core/solve/shareInterval.ts';
import { published } from '../../helpers/published.ts';

// The score method of Wilson 1927, 95 %; the same to twelve digits in scipy 1.17.1.
describe('score interval of a share', () => {
  const newcombe = published({
    source: 'Newcombe 1998, Statistics in Medicine 17, 857–872',
    where: 'table I, method 3',
    kind: 'from memory',
  });

  test.each([
    [81, 263, '0.2553', '0.3662'],
    [15, 148, '0.0624', '0.1605'],
    [0, 20, '0.0000', '0.1611'],
    [1, 29, '0.0061', '0.1718'],
  ])('%i of %i lies between %s and %s', (successes, of, low, high) => {
    const interval = shareInterval(successes, of, 0.95);
    newcombe.says('lower end', interval[0], low);
    newcombe.says('upper end', interval[1], high);
  });
});
