import { describe, expect, test } from 'vitest';
import type { Dimension } from '../../../src/units/dimensions.ts';
import { formatAmount, formatQuantity } from '../../../src/units/formatQuantity.ts';

describe('a quantity to read', () => {
  test.each<[number, Dimension, string, string]>([
    [0.0016, 'length', 'mm', '1.6\u202fmm'],
    [0.0015875, 'length', '"', '0.0625"'],
    [0.0015875, 'length', 'in', '0.0625\u202fin'],
    [298.15, 'temperature', 'degC', '25\u202f°C'],
    [313.15, 'temperature', 'degF', '104\u202f°F'],
    [268.15, 'temperature', 'degC', '−5\u202f°C'],
    [273.15 + 1e-12, 'temperature', 'degC', '0\u202f°C'],
    [273.15 - 1e-3, 'temperature', 'degC', '0\u202f°C'],
    [10, 'temperatureDifference', 'degF', '18\u202f°F'],
    [0.01, 'volumeFlow', 'm3/h', '36\u202fm³/h'],
    [20_000, 'pressure', 'Pa', '20\u202f000\u202fPa'],
    [29.8906692, 'pressure', 'inH2O', '0.12\u202finH₂O'],
    [0.05, 'ratio', '%', '5\u202f%'],
    [0.8, 'ratio', 'plain', '0.8'],
    [Math.PI / 4, 'angle', 'deg', '45°'],
    [4700, 'resistance', 'kohm', '4.7\u202fkΩ'],
    [5e-5, 'contactResistance', 'K cm2/W', '0.5\u202fK·cm²/W'],
    [-0, 'voltage', 'V', '0\u202fV'],
  ])('%d as %s in %s', (value, dimension, unit, text) => {
    expect(formatQuantity(value, dimension, unit)).toBe(text);
  });

  test('has as many digits as asked for', () => {
    expect(formatQuantity(0.0015875, 'length', 'mm', { digits: 2 })).toBe('1.6\u202fmm');
    expect(formatQuantity(0.0015875, 'length', 'mm', { digits: 5 })).toBe('1.5875\u202fmm');
  });

  test('can leave its unit to the head of a column', () => {
    expect(formatAmount(0.01, 'volumeFlow', 'm3/h')).toBe('36');
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])(
    'refuses %d as a mistake of ours',
    (value) => {
      expect(() => formatQuantity(value, 'length', 'mm')).toThrow('is no length');
    },
  );
});
