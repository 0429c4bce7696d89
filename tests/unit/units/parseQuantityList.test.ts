import { describe, expect, test } from 'vitest';
import { parseQuantityList } from '../../../src/units/parseQuantityList.ts';

/** In millimetres, with the units; or the reason. */
function read(text: string, most = 60): string {
  const found = parseQuantityList(text, 'length', 'mm', most);
  return found.ok
    ? found.values.map(({ value, unit }) => `${Number((value * 1000).toFixed(4))} ${unit}`).join(', ')
    : found.reason;
}

describe('a list of lengths', () => {
  test.each([
    ['0, 1/32 in, 0.8 mm, 1.5', '0 in, 0.7937 in, 0.8 mm, 1.5 mm'],
    ['0.2, 0.4, 0.8', '0.2 mm, 0.4 mm, 0.8 mm'],
    ['0.2,0.4,0.8', '0.2 mm, 0.4 mm, 0.8 mm'],
    ['0,8; 1,5', '0.8 mm, 1.5 mm'],
    ['0,8', '0.8 mm'],
    ['0 0.5 1', '0 mm, 0.5 mm, 1 mm'],
    ['0 and 1/16"', '0 ", 1.5875 "'],
    ['1 1/2 mm\n2', '1.5 mm, 2 mm'],
    ['3,', '3 mm'],
  ])('is cut up as people write it: %j', (text, values) => {
    expect(read(text)).toBe(values);
  });

  test('gives a bare number the unit named last before it, or else the first named after', () => {
    expect(read('5 thou, 10, 20')).toBe('0.127 mil, 0.254 mil, 0.508 mil');
    expect(read('1/64, 1/32, 3/64 in')).toBe('0.3969 in, 0.7937 in, 1.1906 in');
    expect(read('1 mm, 1/8 in, 1/4')).toBe('1 mm, 3.175 in, 6.35 in');
  });

  test('says what is wrong with the one that does not read', () => {
    expect(read('1, two, 3')).toContain('«two» is not a number');
    expect(read('1, 2 W')).toContain('is a power');
    expect(read('')).toContain('Nothing stands here');
    expect(read('0,,1')).toContain('«0,,1» is not a number');
  });

  test('has bounds', () => {
    expect(read('1, 2, 3', 2)).toBe('That makes 3 values, and at most 2 fit.');
    expect(read('1, '.repeat(600))).toContain('at most 1000 fit');
  });
});

describe('a range', () => {
  test.each([
    ['0 to 2 mm by 0.5', '0 mm, 0.5 mm, 1 mm, 1.5 mm, 2 mm'],
    ['0 to 2, by 0.5', '0 mm, 0.5 mm, 1 mm, 1.5 mm, 2 mm'],
    ['0..1 in steps of 0.5', '0 mm, 0.5 mm, 1 mm'],
    ['0 – 1 step 0.5', '0 mm, 0.5 mm, 1 mm'],
    ['0-1 mm by 0.5', '0 mm, 0.5 mm, 1 mm'],
    ['0 to 1 by 0.4', '0 mm, 0.4 mm, 0.8 mm, 1 mm'],
    ['0.1, 0.5 to 1 by 0.5, 4', '0.1 mm, 0.5 mm, 1 mm, 4 mm'],
    ['0 to 1/8 in by 1/16', '0 in, 1.5875 in, 3.175 in'],
  ])('is spread over its steps, its end always among them: %j', (text, values) => {
    expect(read(text)).toBe(values);
  });

  test('without a step takes about ten round ones', () => {
    expect(read('0 to 4')).toBe('0 mm, 0.5 mm, 1 mm, 1.5 mm, 2 mm, 2.5 mm, 3 mm, 3.5 mm, 4 mm');
    expect(read('0 to 0.1 in')).toBe(
      Array.from({ length: 11 }, (_, i) => `${Number((0.254 * i).toFixed(4))} in`).join(', '),
    );
  });

  test('has to rise in steps above nothing, and not in too many', () => {
    expect(read('4 to 0')).toContain('has to rise');
    expect(read('0 to 4 by 0')).toContain('needs a step above nothing');
    expect(read('0 to 4 by 0.001')).toBe('That makes 4001 values, and at most 60 fit.');
    expect(read('0 to 1000 m by 0.00001 mm')).toBe('That makes millions of values, and at most 60 fit.');
  });
});
