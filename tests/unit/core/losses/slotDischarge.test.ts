import { describe, expect, test } from 'vitest';
import { slotDischarge } from '../../../../src/core/losses/slotDischarge.ts';

describe('slotDischarge', () => {
  test('a short crack lets a free jet through: about π/(π + 2)', () => {
    const within = 0.002; // stated with two digits
    expect(Math.abs(slotDischarge(0) - Math.PI / (Math.PI + 2))).toBeLessThan(within);
    expect(slotDischarge(1)).toBe(slotDischarge(0));
  });

  test('a deep one fills again, with nothing more to gain beyond two widths', () => {
    expect(slotDischarge(2)).toBeCloseTo(0.8, 12);
    expect(slotDischarge(50)).toBe(slotDischarge(2));
    expect(slotDischarge(1.5)).toBeCloseTo(0.705, 12);
  });
});
