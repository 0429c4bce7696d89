import { describe, expect, test } from 'vitest';
import { unitFactors } from '../../../src/core/system/input.ts';
import { anotherFan, defaultDesign, defaultExtra, defaultPart } from '../../../src/model/defaults.ts';
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
    expect(toCore(full).inlet.filter).toEqual({
      blocked: 0,
      linear_PaSPerM: 4,
      quadratic_PaS2PerM2: 1,
    });
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

  test('is a pressure only where a barometer tells it', () => {
    const room = { ...defaultDesign.room, pressure_Pa: 95_000 };
    expect(toCore({ ...defaultDesign, room }).room.pressure_Pa).toBeNull();
    const read = { ...room, pressureFrom: 'barometer' as const };
    expect(toCore({ ...defaultDesign, room: read }).room.pressure_Pa).toBe(95_000);
  });

  test('is every fan, the space around them, and their age', () => {
    const moreFans = [{ ...anotherFan(defaultDesign.fan, 0), place: 'behind' as const, supply_V: 9 }];
    const fan = { ...defaultDesign.fan, sideBySide: 2, inARow: 3, supplySag: 0.1, speedLoss: 0.2 };
    const plenum = { ...defaultDesign.plenum, neckLength_m: 0.042 };
    expect(toCore({ ...defaultDesign, fan, moreFans, plenum }).fan).toMatchObject({
      sideBySide: 2,
      inARow: 3,
      supplySag: 0.1,
      speedLoss: 0.2,
      inletSpace_m: 0.1,
      outletSpace_m: 0.042 + defaultDesign.box.length_m,
      others: [{ name: 'Fan 2', place: 'behind', supply_V: 9, curve: fan.curve }],
    });
  });

  test('is the dust before the fan, and none at the outlet', () => {
    const inlet = { ...defaultDesign.inlet, filter: true, guardBlocked: 0.2, filterBlocked: 0.4 };
    const told = toCore({ ...defaultDesign, inlet });
    expect(told.inlet).toMatchObject({ guard: { kind: 'wire', blocked: 0.2 }, filter: { blocked: 0.4 } });
    expect(told.outlet.blocked).toBe(0);
  });

  test('is the load as given, its period, the box wall, and what else is judged', () => {
    const told = toCore({
      ...defaultDesign,
      load: { ...defaultDesign.load, period_s: 2 },
      box: { ...defaultDesign.box, tilt_rad: 0.5, sheet_WPerMK: 200 },
      limits: { ...defaultDesign.limits, wall_K: 340, soundJudged: true, sound_dBA: 38, settled: 2e-5 },
    });
    expect(told.load).toMatchObject({ scale: 1, period_s: 2 });
    expect(told.box).toMatchObject({
      tilt_rad: 0.5,
      sheet_WPerMK: 200,
      sheetEmissivity: 0.9,
      sheetHeat_JPerM3K: 1.47e6,
      headroom_m: 0.01,
    });
    expect(told.limits).toMatchObject({ wall_K: 340, soundJudged: true, sound_dBA: 38, settled: 2e-5 });
    expect(told.positions[0]?.part).toMatchObject({ tcr2_perK2: 0, ceramicHeat_JPerM3K: 3.43e6 });
    expect(told.sink.heat_JPerM3K).toBe(2.42e6);
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
