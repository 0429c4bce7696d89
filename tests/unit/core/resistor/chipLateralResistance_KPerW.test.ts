import { describe, expect, test } from 'vitest';
import { chipLateralResistance_KPerW } from '../../../../src/core/resistor/chipLateralResistance_KPerW.ts';

/** Steady strip with even heat and both ends at zero, by cells of equal length: mean temperature per watt. */
function strip_KPerW(length_m: number, section_WmPerK: number, cells: number): number {
  const dx = length_m / cells;
  let mean = 0;
  for (let i = 0; i < cells; i++) {
    // Symmetric halves: what crosses a place at x is the heat made between the middle and there.
    let T = 0;
    const middle = (i + 0.5) * dx;
    const steps = 400;
    for (let j = 0; j < steps; j++) {
      const x = ((j + 0.5) / steps) * Math.min(middle, length_m - middle);
      T += ((0.5 - x / length_m) / section_WmPerK) * (Math.min(middle, length_m - middle) / steps);
    }
    mean += T / cells;
  }
  return mean;
}

describe('chipLateralResistance_KPerW', () => {
  test('is the mean of the strip added up cell by cell', () => {
    const R = chipLateralResistance_KPerW(6e-3, 25, 3e-3, 0.5e-3);
    expect(R / strip_KPerW(6e-3, 25 * 3e-3 * 0.5e-3, 400)).toBeCloseTo(1, 4);
  });

  test('of a chip twice as long and twice as wide is the same', () => {
    const R = chipLateralResistance_KPerW(6e-3, 25, 3e-3, 0.5e-3);
    expect(chipLateralResistance_KPerW(12e-3, 25, 6e-3, 0.5e-3)).toBeCloseTo(R, 12);
  });
});
