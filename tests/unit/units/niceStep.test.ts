import { expect, test } from 'vitest';
import { niceStep } from '../../../src/units/niceStep.ts';

test('a step is the next of 1, 2, 2.5 and 5 times a power of ten', () => {
  expect([0.4, 0.5, 0.51, 1, 1.1, 2.2, 2.6, 7, 10, 0.00012, 330].map(niceStep)).toEqual([
    0.5, 0.5, 1, 1, 2, 2.5, 5, 10, 10, 0.0002, 500,
  ]);
});
