import { describe, expect, test } from 'vitest';
import { boundSize, gapSize, stepsOf } from '../../../../src/report/gaps/gapWords.ts';

const plain = (text: string) => text.replaceAll('\u202f', ' ');

describe('a bound in words', () => {
  test('is never beyond itself', () => {
    expect(plain(boundSize(0.0097187, 'down', 'metric'))).toBe('9.71 mm');
    expect(plain(boundSize(0.0097187, 'up', 'metric'))).toBe('9.72 mm');
    expect(plain(boundSize(0.0097187, 'down', 'inch'))).toBe('0.382 in');
    expect(plain(boundSize(0, 'down', 'metric'))).toBe('0 mm');
  });

  test('that is told as it stands stays', () => {
    expect(plain(boundSize(0.0008, 'down', 'metric'))).toBe('0.8 mm');
    expect(plain(boundSize(0.0008, 'up', 'metric'))).toBe('0.8 mm');
  });

  test('that is soft has fewer digits', () => {
    expect(plain(boundSize(0.00039, 'up', 'metric', true))).toBe('0.4 mm');
    expect(plain(boundSize(0.00168, 'down', 'metric', true))).toBe('1.6 mm');
    expect(plain(boundSize(0.01512, 'up', 'metric', true))).toBe('16 mm');
    expect(plain(boundSize(0.00014, 'down', 'metric', true))).toBe('0.14 mm');
  });
});

test('a step is a tenth of a millimetre or a whole one, or so much of an inch', () => {
  expect(stepsOf('metric').map(({ words }) => plain(words))).toEqual(['0.1 mm', 'millimetre']);
  expect(stepsOf('inch').map(({ words }) => plain(words))).toEqual(['0.005 in', '0.05 in']);
});

test('what is read off a curve has fewer digits', () => {
  expect(plain(gapSize(0.000874, 'metric'))).toBe('0.874 mm');
  expect(plain(gapSize(0.000874, 'metric', 2))).toBe('0.87 mm');
});
