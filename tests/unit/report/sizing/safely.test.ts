import { expect, test } from 'vitest';
import { saidSafely } from '../../../../src/report/sizing/safely.ts';

test.each([
  [8.4273, 'voltage', 'up', '8.43 V'],
  [8.4273, 'voltage', 'down', '8.42 V'],
  [6.000000006, 'voltage', 'up', '6 V'],
  [0.00117963, 'length', 'down', '1.17 mm'],
  [0.0000487243, 'length', 'down', '0.0487 mm'],
  [297.52, 'temperature', 'down', '24.3 °C'],
  [262.13, 'temperature', 'down', '−11.1 °C'],
  [1234.4, 'altitude', 'down', '1230 m'],
  [0, 'ratio', 'down', '0 %'],
] as const)('%d as %s, rounded %s, is told as %s', (value, dimension, side, text) => {
  const told = saidSafely(value, dimension, 'metric', side);
  expect(told.text.replaceAll('\u202f', ' ')).toBe(text);
});

test('what is told is what is put into a design, in any unit', () => {
  const told = saidSafely(0.00117963, 'length', 'inch', 'down');
  expect(told.text.replaceAll('\u202f', ' ')).toBe('0.0464 in');
  expect(told.SI).toBeCloseTo(0.0464 * 0.0254, 15);
  expect(told.SI).toBeLessThan(0.00117963);
});
