import { describe, expect, test } from 'vitest';
import { accepts } from '../../../src/model/accepts.ts';

describe('what the schema takes in one place', () => {
  test.each([
    ['baffle.fitted', true],
    ['outlet.kind', 'wire'],
    ['sink.finCount', 9],
    ['baffle.sideClearance_m', 0],
    ['variant', 'B'],
  ])('%s may be %s', (path, value) => expect(accepts(path, value)).toBe(true));

  test.each([
    ['baffle.fitted', 'yes'],
    ['outlet.kind', 'cloth'],
    ['sink.finCount', 9.5],
    ['sink.finCount', 1],
    ['baffle.sideClearance_m', -1e-6],
    ['baffle.sideClearance_m', Number.NaN],
    ['variant', 'x'.repeat(41)],
  ])('%s may not be %s', (path, value) => expect(accepts(path, value)).toBe(false));
});
