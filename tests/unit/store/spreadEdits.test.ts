import { describe, expect, test } from 'vitest';
import { defaultDesign } from '../../../src/model/defaults.ts';
import type { Spread } from '../../../src/model/spreads/usualSpread.ts';
import {
  isSized,
  nominalOf,
  readSize,
  shapesFor,
  sizeBox,
  withShape,
} from '../../../src/store/spreadEdits.ts';

const gap: Spread = { path: 'baffle.sideClearance_m', kind: 'uniform', relative: false, size: 2e-4 };
const room: Spread = { path: 'room.T_K', kind: 'uniform', relative: false, size: 2 };
const bond: Spread = { path: 'bond.sheetK_WPerMK', kind: 'lognormal', relative: true, size: 0.2 };
const read = (text: string, spread: Spread, system: 'metric' | 'inch' = 'metric') => {
  const found = readSize(text, spread, system);
  return found.ok ? [found.spread.size, found.spread.relative] : found.reason;
};

describe('the size of a spread as typed', () => {
  test('is in the unit of its input, bare or with another one', () => {
    expect(read('0.3', gap)).toEqual([3e-4, false]);
    expect(read('0.01', gap, 'inch')).toEqual([2.54e-4, false]);
    expect(read('10 thou', gap)).toEqual([2.54e-4, false]);
  });

  test('of a temperature is a difference', () => {
    expect(read('3', room)).toEqual([3, false]);
    expect(read('9 °F', room)).toEqual([5, false]);
    expect(sizeBox(room, 'inch')).toMatchObject({ text: '3.6', unit: '°F' });
  });

  test('with % is a share, and a share takes a unit again', () => {
    expect(read('10 %', gap)).toEqual([0.1, true]);
    const share = { ...gap, relative: true, size: 0.1 };
    expect(read('12', share)).toEqual([0.12, true]);
    expect(read('0.2 mm', share)).toEqual([2e-4, false]);
  });

  test('is always a share where it is skewed, or of a curve', () => {
    expect(read('30', bond)).toEqual([0.3, true]);
    expect(read('0.1 W/mK', bond)).toMatch(/takes a share/);
    expect(read('1 m³/h', { ...gap, path: 'fan.curve[].flow_m3PerS', relative: true })).toMatch(
      /takes a share/,
    );
  });

  test('of what is a share itself stays in its own points', () => {
    expect(read('4 %', { ...gap, path: 'bond.voidShare' })).toEqual([0.04, false]);
  });

  test('says what is allowed where it cannot be', () => {
    expect(read('0', gap)).toBe(
      'Out of bounds. Allowed is more than nothing, 0 to 200\u202fmm, or a share in %.',
    );
    expect(read('120 %', gap)).toBe('Out of bounds. Allowed is more than nothing, 0 to 100\u202f%.');
    expect(read('250 %', bond)).toBe('Out of bounds. Allowed is more than nothing, 0 to 200\u202f%.');
    expect(read('', gap)).not.toBe('');
  });
});

describe('the shape of a spread', () => {
  test('may be a tolerance only where the design states one', () => {
    expect(shapesFor('parts[].R_Ohm')).toContain('tolerance');
    expect(shapesFor(gap.path)).not.toContain('tolerance');
    expect([isSized(gap), isSized({ kind: 'none' }), isSized({ kind: 'tolerance' })]).toEqual([
      true,
      false,
      false,
    ]);
  });

  test('changes and keeps the size', () => {
    expect(withShape(gap, 'normal', defaultDesign, 8e-4)).toEqual({ ...gap, kind: 'normal' });
    expect(withShape(gap, 'none', defaultDesign, 8e-4)).toEqual({ ...gap, kind: 'none' });
  });

  test('skewed takes the size as a share of what the design says', () => {
    expect(nominalOf(defaultDesign, gap.path)).toBe(8e-4);
    expect(withShape(gap, 'lognormal', defaultDesign, 8e-4)).toMatchObject({ relative: true, size: 0.25 });
    expect(withShape(gap, 'lognormal', defaultDesign, 0)).toMatchObject({ relative: true, size: 0.05 });
  });

  test('that had no size begins with the usual one, or the tolerance', () => {
    const off: Spread = { ...gap, kind: 'none', size: 0 };
    expect(withShape(off, 'triangular', defaultDesign, 8e-4)).toEqual({ ...gap, kind: 'triangular' });
    const ohms: Spread = { path: 'parts[].R_Ohm', kind: 'tolerance', relative: true, size: 0 };
    expect(nominalOf(defaultDesign, ohms.path)).toBe(10);
    expect(withShape(ohms, 'normal', defaultDesign, 10)).toEqual({ ...ohms, kind: 'normal', size: 0.01 });
    expect(withShape({ ...ohms, kind: 'normal', size: 0.3 }, 'tolerance', defaultDesign, 10)).toEqual(ohms);
  });

  test('of a list without rows has no nominal value', () => {
    expect(nominalOf(defaultDesign, 'extras[].loss')).toBeNull();
  });
});
