import { describe, expect, test } from 'vitest';
import { deviated, variate } from '../../../../src/studies/tolerance/variate.ts';

const kinds = ['normal', 'lognormal', 'uniform', 'triangular', 'tolerance'] as const;

describe('a deviation in units of a spread’s size', () => {
  test.each(kinds)('of a %s spread is nil in the middle and as far on either side', (kind) => {
    expect(variate(kind, 0.5)).toBeCloseTo(0, 12);
    expect(variate(kind, 0.1)).toBeCloseTo(-variate(kind, 0.9), 12);
  });

  test('is one standard deviation where the normal distribution has it, and ends where an even one ends', () => {
    expect(variate('normal', 0.8413447460685429)).toBeCloseTo(1, 9);
    expect(variate('uniform', 0.75)).toBe(0.5);
    expect(variate('triangular', 0.125)).toBeCloseTo(-0.5, 12);
    expect(variate('none', 0.9)).toBe(0);
  });
});

describe('a value with a deviation', () => {
  test('moves by the size in its own unit, by a share of itself, or by a factor', () => {
    expect(deviated(0.01, { kind: 'normal', relative: false, size: 1e-3 }, 2)).toBeCloseTo(0.012, 15);
    expect(deviated(0.01, { kind: 'uniform', relative: true, size: 0.1 }, -1)).toBeCloseTo(0.009, 15);
    expect(deviated(0.01, { kind: 'lognormal', relative: true, size: 0.2 }, 1)).toBeCloseTo(
      0.01 * Math.exp(0.2),
      15,
    );
  });
});
