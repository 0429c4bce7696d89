import { describe, expect, test } from 'vitest';
import { obstructedShare } from '../../../../src/core/fan/obstructedShare.ts';

describe('obstructedShare', () => {
  test('is nothing from one diameter on', () => {
    expect(obstructedShare(0.06, 0.06)).toBe(0);
    expect(obstructedShare(1, 0.06)).toBe(0);
  });

  test('grows as the room shrinks, to three tenths at none', () => {
    expect(obstructedShare(0.04, 0.06)).toBeCloseTo(0.1, 14);
    expect(obstructedShare(0.02, 0.06)).toBeCloseTo(0.2, 14);
    expect(obstructedShare(0, 0.06)).toBe(0.3);
  });
});
