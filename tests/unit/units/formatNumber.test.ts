import { describe, expect, test } from 'vitest';
import { formatNumber } from '../../../src/units/formatNumber.ts';

describe('a number to read', () => {
  test.each([
    [0, 3, '0'],
    [-0, 3, '0'],
    [1.5999999999, 4, '1.6'],
    [9.9996, 4, '10'],
    [1234.5, 5, '1234.5'],
    [12345, 5, '12\u202f345'],
    [12345, 3, '12\u202f300'],
    [1234567.25, 9, '1\u202f234\u202f567.25'],
    [-2.5, 3, '−2.5'],
    [0.000001234, 3, '0.00000123'],
    [0.000000123, 3, '1.23×10⁻⁷'],
    [-4.2e17, 3, '−4.2×10¹⁷'],
    [0.1 + 0.2, 17, '0.30000000000000004'],
    [123, 0, '100'],
    [-Number.MAX_VALUE, 1, '−1.7976931348623157×10³⁰⁸'],
    [Number.MIN_VALUE, 3, '5×10⁻³²⁴'],
  ])('%d to %d digits', (value, digits, text) => {
    expect(formatNumber(value, digits)).toBe(text);
  });

  test('has no more decimals than are worth it, and never minus nothing', () => {
    expect(formatNumber(25.12345, 6, 2)).toBe('25.12');
    expect(formatNumber(-0.004, 4, 2)).toBe('0');
    expect(formatNumber(0, 4, 2)).toBe('0');
    expect(formatNumber(342.3045, 6, 2)).toBe('342.3');
    expect(formatNumber(1e308, 1, 2)).toBe('1×10³⁰⁸');
  });

  test('refuses what is no number', () => {
    expect(() => formatNumber(Number.NaN, 3)).toThrow('NaN cannot be shown');
  });
});
