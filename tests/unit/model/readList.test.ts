import { expect, test } from 'vitest';
import { readList } from '../../../src/model/readList.ts';

const path = 'baffle.sideClearance_m';

test('a list of values for an input comes in order, each once', () => {
  expect(readList(path, '1.5, 0, 0.8 mm, 0.8', 'metric', { most: 10 })).toEqual({
    ok: true,
    values: [0, 0.0008, 0.0015],
  });
});

test('a bare number is in inches for who thinks in inches', () => {
  expect(readList(path, '0.1', 'inch', { most: 10 })).toEqual({ ok: true, values: [0.00254] });
  expect(readList(path, '0.1', 'inch', { most: 10, unit: 'mm' })).toEqual({ ok: true, values: [0.0001] });
});

test('a value outside the input’s hard limits is refused with what is allowed', () => {
  expect(readList(path, '1, 300', 'metric', { most: 10 })).toEqual({
    ok: false,
    reason: 'Out of bounds. Allowed is 0 to 200\u202fmm.',
  });
});

test('what does not read says so', () => {
  const read = readList(path, 'wide', 'metric', { most: 10 });
  expect(read.ok ? '' : read.reason).toContain('«wide»');
});

test('an input that is no quantity is a mistake of ours', () => {
  expect(() => readList('baffle.fitted', '1', 'metric', { most: 10 })).toThrow('no quantity');
});
