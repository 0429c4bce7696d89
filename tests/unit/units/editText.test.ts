import { describe, expect, test } from 'vitest';
import type { Dimension } from '../../../src/units/dimensions.ts';
import { editText } from '../../../src/units/editText.ts';

describe('a value to be edited', () => {
  test.each<[number, Dimension, string, string]>([
    [0.0016, 'length', 'mm', '1.6'],
    [0.0015875, 'length', 'in', '0.0625'],
    [0.1 + 0.2, 'length', 'm', '0.3'],
    [0.00159999999999, 'length', 'mm', '1.59999999999'],
    [1 / 3, 'length', 'm', '0.333333333333'],
    [303.15, 'temperature', 'degC', '30'],
    [308.15, 'temperature', 'degF', '95'],
    [268.15, 'temperature', 'degC', '-5'],
    [273.15, 'temperature', 'degC', '0'],
    [0, 'temperature', 'degF', '-459.67'],
    [25e-6, 'temperatureCoefficient', 'ppm/K', '25'],
    [100_000, 'voltage', 'V', '100000'],
    [0.05, 'ratio', '%', '5'],
    [-0, 'voltage', 'V', '0'],
    [0, 'pressure', 'inH2O', '0'],
  ])('%d as %s in %s', (value, dimension, unit, text) => {
    expect(editText(value, dimension, unit)).toBe(text);
  });

  test('is never something that is no number', () => {
    expect(() => editText(Number.NaN, 'length', 'mm')).toThrow('cannot be edited');
    expect(() => editText(1e308, 'length', 'um')).toThrow('cannot be edited');
  });
});
