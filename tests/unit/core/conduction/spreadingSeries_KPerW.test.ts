import { describe, expect, test } from 'vitest';
import {
  seriesExample,
  spreadingSeries_KPerW,
} from '../../../../src/core/conduction/spreadingSeries_KPerW.ts';

describe('spreadingSeries_KPerW', () => {
  test('a source that covers its plate has no spreading', () => {
    const covered = { ...seriesExample, sourceLength_m: 40e-3, sourceWidth_m: 40e-3 };
    expect(spreadingSeries_KPerW(covered, 'mean', 50)).toBeCloseTo(0, 12);
    expect(spreadingSeries_KPerW(covered, 'peak', 50)).toBeCloseTo(0, 12);
  });

  test('a strip across the whole plate spreads along one edge only', () => {
    const strip = { ...seriesExample, sourceWidth_m: 40e-3 };
    const twiceAsWide = { ...strip, sourceWidth_m: 80e-3, plateWidth_m: 80e-3 };
    const ratio = spreadingSeries_KPerW(strip, 'mean', 100) / spreadingSeries_KPerW(twiceAsWide, 'mean', 100);
    expect(ratio).toBeCloseTo(2, 9);
  });

  test.each([
    ['a metre thick', { thickness_m: 1 }],
    ['cooled without limit', { h_WPerM2K: 1e9 }],
    ['not cooled', { h_WPerM2K: 0 }],
  ])('stays finite for a plate that is %s', (_, change) => {
    const value = spreadingSeries_KPerW({ ...seriesExample, ...change }, 'peak', 100);
    expect(Number.isFinite(value)).toBe(true);
    expect(value).toBeGreaterThan(0);
  });

  test('does not mind which edge comes first', () => {
    const lying = { ...seriesExample, sourceLength_m: 6e-3, plateLength_m: 25e-3 };
    const standing = { ...seriesExample, sourceWidth_m: 6e-3, plateWidth_m: 25e-3 };
    const first = spreadingSeries_KPerW(lying, 'peak', 100);
    expect(spreadingSeries_KPerW(standing, 'peak', 100)).toBeCloseTo(first, 9);
  });

  test('twice the waves change the sixth place at most', () => {
    const usual = spreadingSeries_KPerW(seriesExample, 'peak');
    expect(spreadingSeries_KPerW(seriesExample, 'peak', 800)).toBeCloseTo(usual, 5);
  });
});
