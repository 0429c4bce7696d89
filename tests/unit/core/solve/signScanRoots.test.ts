import { describe, expect, test } from 'vitest';
import { evenPlaces, signScanRoots } from '../../../../src/core/solve/signScanRoots.ts';

describe('signScanRoots', () => {
  test('finds every crossing in order and says which way it goes', () => {
    const found = signScanRoots((x) => Math.sin(x), evenPlaces(0.1, 10, 40), 1e-13);
    expect(found.map(({ rising }) => rising)).toEqual([false, true, false]);
    found.forEach(({ root }, i) => {
      expect(root).toBeCloseTo((i + 1) * Math.PI, 11);
    });
  });

  test('finds a root that falls on its grid once', () => {
    const found = signScanRoots((x) => 0.5 - x, evenPlaces(0, 1, 4), 1e-13);
    expect(found).toEqual([{ root: 0.5, rising: false }]);
  });

  test('finds nothing where nothing changes sign', () => {
    expect(signScanRoots((x) => x * x + 1, evenPlaces(-1, 1, 10), 1e-12)).toEqual([]);
    expect(signScanRoots((x) => -x * x, evenPlaces(-1, 0.5, 10), 1e-12)).toEqual([]);
  });

  test('leaves out a change of sign across a place without a value', () => {
    expect(signScanRoots((x) => 1 / (x - 0.5), evenPlaces(0, 1, 2), 1e-12)).toEqual([]);
  });
});
