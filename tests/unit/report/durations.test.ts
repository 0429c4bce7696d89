import { expect, test } from 'vitest';
import { duration } from '../../../src/report/durations.ts';

test.each([
  [0, 'no time'],
  [2.5e-6, '2.5 µs'],
  [40e-6, '40 µs'],
  [1.5e-3, '1.5 ms'],
  [0.04, '40 ms'],
  [4, '4.0 s'],
  [31.2, '31 s'],
  [99.6, '1 min 40 s'],
  [140, '2 min 20 s'],
  [599, '10 min'],
  [1790, '30 min'],
  [7500, '2 h 5 min'],
  [3600, '1 h'],
])('%f s is said as %s', (time_s, words) => {
  expect(duration(time_s).replaceAll('\u202f', ' ')).toBe(words);
});
