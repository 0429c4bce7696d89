import { describe, expect, test } from 'vitest';
import { defaultDesign, defaultPart } from '../../../../src/model/defaults.ts';
import { sizeDimension, statedTolerance } from '../../../../src/model/spreads/sizes.ts';

describe('the size of a spread', () => {
  test('is a share where it is relative or skewed, else a difference of what its input measures', () => {
    const of = (path: string, relative = false, kind: 'normal' | 'lognormal' = 'normal') =>
      sizeDimension({ path, relative, kind });
    expect(of('baffle.slotWidth_m')).toBe('length');
    expect(of('room.T_K')).toBe('temperatureDifference');
    expect(of('fan.sound_dBA')).toBe('soundLevel');
    expect(of('inlet.guard.freeShare')).toBe('ratio');
    expect(of('baffle.slotWidth_m', true)).toBe('ratio');
    expect(of('bond.sheetK_WPerMK', false, 'lognormal')).toBe('ratio');
  });

  test('by tolerance is what the design states, over all rows', () => {
    const design = {
      ...defaultDesign,
      parts: [
        { ...defaultPart, tolerance: 0.01 },
        { ...defaultPart, tolerance: 0.05 },
      ],
    };
    expect(statedTolerance(design, 'parts[].R_Ohm')).toEqual([0.01, 0.05]);
    expect(statedTolerance(design, 'positions[].power_W')).toEqual([0.01, 0.01]);
    expect(statedTolerance(design, 'load.supply_V')).toEqual([0.02, 0.02]);
    expect(statedTolerance(design, 'fan.supplySag')).toEqual([0, 0]);
    expect(statedTolerance(design, 'room.T_K')).toEqual([0, 0]);
  });
});
