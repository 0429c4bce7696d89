import { describe, expect, test } from 'vitest';
import { unitFactors } from '../../../src/core/system/input.ts';
import { defaultDesign, defaultExtra, defaultPart } from '../../../src/model/defaults.ts';
import type { Design } from '../../../src/model/design.ts';
import { toCore } from '../../../src/model/toCore.ts';

describe('what the core is told', () => {
  test.each([
    ['wattsEach', 0],
    ['seriesVolts', 24],
    ['seriesAmps', 3],
    ['parallelVolts', 24],
    ['parallelAmps', 3],
    ['switched', 24],
  ] as const)('is the supply that %s asks for', (excitation, supply) => {
    const load = { ...defaultDesign.load, excitation, supply_V: 24, supply_A: 3 };
    expect(toCore({ ...defaultDesign, load }).load.supply).toBe(supply);
  });

  test('is the conductivity to count on, not the data sheet’s', () => {
    const bond = { ...defaultDesign.bond, sheetK_WPerMK: 1.5, designShare: 0.6 };
    expect(toCore({ ...defaultDesign, bond }).bond.k_WPerMK).toBeCloseTo(0.9, 12);
  });

  test('is nothing of a filter or a baffle that is not fitted', () => {
    const bare: Design = {
      ...defaultDesign,
      inlet: { ...defaultDesign.inlet, filter: false },
      baffle: { ...defaultDesign.baffle, fitted: false },
    };
    expect(toCore(bare).inlet.filter).toBeNull();
    expect(toCore(bare).baffle).toBeNull();
    const full = { ...defaultDesign, inlet: { ...defaultDesign.inlet, filter: true } };
    expect(toCore(full).inlet.filter).toEqual({ linear_PaSPerM: 4, quadratic_PaS2PerM2: 1 });
    expect(toCore(full).baffle?.slotWidth_m).toBe(defaultDesign.baffle.slotWidth_m);
  });

  test('gives each position its own part', () => {
    const other = { ...defaultPart, name: 'other', R_Ohm: 33 };
    const positions = defaultDesign.positions.map((position, index) => ({ ...position, part: index % 2 }));
    const told = toCore({ ...defaultDesign, parts: [defaultPart, other], positions });
    expect(told.positions.map(({ part }) => part.R_Ohm)).toEqual([10, 33, 10, 33]);
  });

  test('takes the plenum to be as long as the box and the sheet to soften where the box does', () => {
    const told = toCore(defaultDesign);
    expect(told.plenum.length_m).toBe(defaultDesign.box.length_m);
    expect(told.limits.sheet_K).toBe(defaultDesign.box.softening_K);
    expect(told.factors).toEqual(unitFactors);
  });

  test('is no gap where none can be, and no filter that does nothing', () => {
    const told = toCore({
      ...defaultDesign,
      baffle: { ...defaultDesign.baffle, leakGap_m: 1e-200, sideClearance_m: 1e-12, endClearance_m: 2e-9 },
      inlet: {
        ...defaultDesign.inlet,
        filter: true,
        filterLinear_PaSPerM: 1e-30,
        filterQuadratic_PaS2PerM2: 0,
      },
    });
    expect(told.baffle).toMatchObject({ leakGap_m: 0, sideClearance_m: 0, endClearance_m: 2e-9 });
    expect(told.inlet.filter).toBeNull();
  });

  test('lets measured losses begin without flow and without loss', () => {
    const extra = { ...defaultExtra, points: [{ flow_m3PerS: 0.01, dp_Pa: 8 }] };
    expect(toCore({ ...defaultDesign, extras: [extra] }).extras[0]?.points).toEqual([
      { flow_m3PerS: 0, dp_Pa: 0 },
      { flow_m3PerS: 0.01, dp_Pa: 8 },
    ]);
    expect(toCore({ ...defaultDesign, extras: [defaultExtra] }).extras[0]?.points).toEqual([]);
  });
});
