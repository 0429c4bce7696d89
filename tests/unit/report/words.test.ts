import { describe, expect, test } from 'vitest';
import { variableText, variableWords } from '../../../src/report/variables.ts';
import {
  counted,
  fixed,
  kelvins,
  listed,
  percent,
  roundTicks,
  temperature,
  times,
} from '../../../src/report/words.ts';

const plain = (text: string) => text.replaceAll('\u202f', ' ');

describe('numbers in words', () => {
  test('use a true minus and never print a negative nought', () => {
    expect(fixed(-0.04, 1)).toBe('0.0');
    expect(fixed(-2.5, 1)).toBe('−2.5');
  });

  test('give shares below ten per cent a tenth', () => {
    expect(plain(percent(0.0312))).toBe('3.1 %');
    expect(plain(percent(0.78))).toBe('78 %');
    expect(plain(percent(0.0999))).toBe('10 %');
  });

  test('give temperatures and differences in the unit asked for', () => {
    expect(plain(temperature(373.15, 'metric'))).toBe('100 °C');
    expect(plain(temperature(373.15, 'inch'))).toBe('212 °F');
    expect(plain(kelvins(10, 'metric'))).toBe('10 K');
    expect(plain(kelvins(10, 'inch'))).toMatch(/^18 (°F|Δ°F|F°)$/);
  });

  test('do not count beyond a hundred times', () => {
    expect(plain(times(1.254))).toBe('1.25 ×');
    expect(plain(times(520))).toBe('> 100 ×');
  });
});

test('lists and counts read as English', () => {
  expect(listed(['a'])).toBe('a');
  expect(listed(['a', 'b'])).toBe('a and b');
  expect(listed(['a', 'b', 'c'])).toBe('a, b and c');
  expect(counted(1, 'sink')).toBe('1 sink');
  expect(counted(2, 'sink')).toBe('2 sinks');
});

test.each([
  [0, 35.3],
  [30, 158],
  [0, 0.23],
  [-3, 4],
  [25, 25],
])('ticks from %d to %d are round, rise, and span the range', (low, high) => {
  const ticks = roundTicks(low, high);
  expect(ticks[0]).toBeLessThanOrEqual(low + 1e-9);
  expect(ticks.at(-1)).toBeGreaterThanOrEqual(high - 1e-9);
  expect(ticks.length).toBeLessThanOrEqual(8);
  for (const [i, value] of ticks.entries())
    if (i > 0) expect(value).toBeGreaterThan(ticks[i - 1] ?? Number.NaN);
});

test('variables of methods are said in words and units', () => {
  expect(variableWords('reynolds')).toBe('Reynolds number');
  expect(variableWords('finThickness_m')).toBe('fin thickness');
  expect(plain(variableText('finThickness_m', 0.0008, 'metric'))).toBe('0.8 mm');
  expect(plain(variableText('wall_K', 373.15, 'metric'))).toBe('100 °C');
});
