import { describe, expect, test } from 'vitest';
import { solveSystem } from '../../../../src/core/system/solveSystem.ts';
import { defaultDesign } from '../../../../src/model/defaults.ts';
import type { Design } from '../../../../src/model/design.ts';
import { exampleById } from '../../../../src/model/examples/examples.ts';
import { shelf } from '../../../../src/model/shelf/shelf.ts';
import { toCore } from '../../../../src/model/toCore.ts';
import { insulatingAdhesives } from '../../../../src/studies/changes/bondChanges.ts';
import type { Change, ChangeKey } from '../../../../src/studies/changes/change.ts';
import { changesOf } from '../../../../src/studies/changes/changesOf.ts';
import { finFault } from '../../../../src/studies/changes/sinkChanges.ts';

const eight = exampleById('eightResistors');

function changes(design: Design): Change[] {
  const outcome = solveSystem(toCore(design));
  return changesOf(design, outcome.ok ? outcome.heat : null);
}

function change(design: Design, key: ChangeKey): Change | undefined {
  return changes(design).find((each) => each.key === key);
}

describe('gaps', () => {
  test('are halved, and closed as far as can be cut', () => {
    expect(change(eight, 'sideHalved')?.values).toEqual({ 'baffle.sideClearance_m': 0.0004 });
    expect(change(eight, 'sideClosed')?.values).toEqual({ 'baffle.sideClearance_m': 0.0002 });
    expect(change(eight, 'endHalved')?.values).toEqual({ 'baffle.endClearance_m': 0.0004 });
    expect(change(eight, 'leakSealed')?.values).toEqual({ 'baffle.leakGap_m': 0 });
  });

  test('are left alone where they are as tight as the fit allowance lets them be', () => {
    const loose = { ...eight, cutting: { ...eight.cutting, fit_m: 0.0004 } };
    expect(change(loose, 'sideHalved')).toBeUndefined();
    expect(change(loose, 'sideClosed')).toBeUndefined();
    const tight = { ...eight, baffle: { ...eight.baffle, sideClearance_m: 0.0003 } };
    expect(change(tight, 'sideHalved')).toBeUndefined();
    expect(change(tight, 'sideClosed')?.values).toEqual({ 'baffle.sideClearance_m': 0.0002 });
  });

  test('wait for a baffle where there is none', () => {
    const open = { ...eight, baffle: { ...eight.baffle, fitted: false } };
    expect(change(open, 'baffleFitted')?.values).toEqual({ 'baffle.fitted': true });
    for (const key of ['sideHalved', 'leakSealed', 'slotWider', 'collarRaised'] as const)
      expect(change(open, key)).toBeUndefined();
    expect(change(eight, 'baffleFitted')).toBeUndefined();
  });
});

test('a neck-down that slopes less keeps its rise by growing longer', () => {
  const { neckAngle_rad, neckLength_m } = eight.plenum;
  const values = change(eight, 'neckGentler')?.values ?? {};
  const angle_rad = Number(values['plenum.neckAngle_rad']);
  expect(angle_rad).toBeCloseTo(0.6 * neckAngle_rad, 1);
  const rise_m = Number(values['plenum.neckLength_m']) * Math.tan(angle_rad / 2);
  expect(Math.abs(rise_m - neckLength_m * Math.tan(neckAngle_rad / 2))).toBeLessThan(5e-4);
});

describe('guards', () => {
  test('get more open area, or round wires; dust is cleaned away; none is taken off', () => {
    const dusty = {
      ...eight,
      inlet: {
        ...eight.inlet,
        guard: { kind: 'square' as const, freeShare: 0.5, loss: 1 },
        guardBlocked: 0.3,
      },
    };
    expect(change(dusty, 'guardWider')?.values).toEqual({ 'inlet.guard.freeShare': 0.65 });
    expect(change(dusty, 'guardWires')?.values).toEqual({ 'inlet.guard.kind': 'wire' });
    expect(change(dusty, 'guardCleaned')?.values).toEqual({ 'inlet.guardBlocked': 0 });
    for (const { values } of changes(dusty)) expect(Object.values(values)).not.toContain('none');
  });
});

describe('fans', () => {
  const fed = (supply_V: number) => ({ ...eight, fan: { ...eight.fan, supply_V } });

  test('are fed their rated volts, and a tenth more only from there', () => {
    expect(change(fed(9), 'fanRated')?.values).toEqual({ 'fan.supply_V': 12 });
    expect(change(fed(9), 'fanFaster')).toBeUndefined();
    expect(change(fed(12), 'fanRated')).toBeUndefined();
    expect(change(fed(12), 'fanFaster')?.values).toEqual({ 'fan.supply_V': 13.2 });
    expect(change(fed(13.2), 'fanFaster')).toBeUndefined();
  });

  test('of other kinds are raised with the first', () => {
    const { name, sideBySide, inARow, size_m, depth_m, inletSpace_m, supplySag, speedLoss, ...kind } =
      eight.fan;
    const two: Design = {
      ...fed(9),
      moreFans: [{ ...kind, name: 'Second', place: 'beside', rated_V: 5, supply_V: 4 }],
    };
    expect(change(two, 'fanRated')?.values).toEqual({ 'fan.supply_V': 12, 'moreFans[0].supply_V': 5 });
  });

  test('are added up to as many as a design takes', () => {
    expect(change(eight, 'fanBeside')?.values).toEqual({ 'fan.sideBySide': 2 });
    const full = { ...eight, fan: { ...eight.fan, sideBySide: 8, inARow: 4 } };
    expect(change(full, 'fanBeside')).toBeUndefined();
    expect(change(full, 'fanBehind')).toBeUndefined();
  });
});

describe('bonds', () => {
  test('get plastic line of a diameter that is sold', () => {
    expect(change(eight, 'filamentThinner')?.values).toEqual({ 'bond.filament_m': 0.00012 });
    expect(change(eight, 'filamentThinnest')?.values).toEqual({ 'bond.filament_m': 0.0001 });
    const thin = { ...eight, bond: { ...eight.bond, filament_m: 0.0001 } };
    expect(change(thin, 'filamentThinner')).toBeUndefined();
  });

  test('get a better adhesive from the shelf, by name and with all its values', () => {
    const poor = { ...eight, bond: { ...eight.bond, sheetK_WPerMK: 0.2 } };
    expect(change(poor, 'adhesiveBetter')?.values).toMatchObject({
      'bond.material': 'Filled epoxy',
      'bond.sheetK_WPerMK': 1,
    });
    expect(change(eight, 'adhesiveBetter')).toBeUndefined();
    expect(change(eight, 'adhesiveHotter')?.values['bond.material']).toBe('Silicone adhesive, filled');
  });

  test('are never offered one that conducts electricity', () => {
    for (const name of insulatingAdhesives) {
      const entry = shelf.bond.find((each) => each.name === name);
      expect(entry, name).toBeDefined();
      expect(entry?.note).not.toMatch(/electricity/);
    }
  });
});

describe('fins', () => {
  const cut = (cutter_m: number): Design => ({ ...eight, cutting: { ...eight.cutting, cutter_m } });

  test('are told why the end mill cannot cut them', () => {
    expect(change(cut(0.0015), 'finsMore')).toMatchObject({ values: { 'sink.finCount': 10 } });
    expect(change(cut(0.0015), 'finsMore')?.fault).toBeUndefined();
    expect(change(cut(0.002), 'finsMore')).toMatchObject({
      values: { 'sink.finCount': 10 },
      fault: { rule: 'slot', cutter_m: 0.002 },
    });
  });

  test('are made as high as goes into the box', () => {
    expect(change(eight, 'finsHigher')?.values).toEqual({ 'sink.finHeight_m': 0.0115 });
    const short = { ...eight, box: { ...eight.box, length_m: 0.136 } };
    expect(change(short, 'finsHigher')?.values).toEqual({ 'sink.finHeight_m': 0.0105 });
    const roomy = { ...eight, box: { ...eight.box, length_m: 0.2 } };
    expect(change(roomy, 'finsHigher')?.values).toEqual({ 'sink.finHeight_m': 0.012 });
  });

  test('that no mill has cut so far need be no narrower than now', () => {
    const wide = cut(0.003);
    expect(finFault(wide, wide.sink)).toBe(null);
    expect(finFault(wide, { ...wide.sink, finCount: 7 })).toBe(null);
    expect(finFault(wide, { ...wide.sink, finCount: 10 })).toMatchObject({ rule: 'slot' });
  });

  test('are not deeper than a mill goes', () => {
    const low: Design = { ...cut(0.002), sink: { ...eight.sink, finHeight_m: 0.007 } };
    expect(finFault(low, { ...low.sink, finHeight_m: 0.0088 })).toBe(null);
    expect(finFault(low, { ...low.sink, finHeight_m: 0.0091 })).toMatchObject({ milled: true, most: 4 });
    expect(change(low, 'finsFewer')?.costs).toEqual(['cut']);
  });

  test('that no mill has cut are a profile, and may be as deep as profiles are', () => {
    const bought = cut(0.003);
    expect(finFault(bought, { ...bought.sink, finHeight_m: 0.013 })).toBe(null);
    expect(finFault(bought, { ...bought.sink, finHeight_m: 0.0136 })).toMatchObject({
      milled: false,
      most: 6,
    });
    expect(change(bought, 'finsFewer')?.costs).toEqual(['buy']);
  });

  test('of a wider sink are as far apart as now, or farther', () => {
    const { sink } = eight;
    const values = change(eight, 'sinkWider')?.values ?? {};
    const [width_m, count] = [Number(values['sink.width_m']), Number(values['sink.finCount'])];
    const gap = (w: number, n: number) => (w - n * sink.finThickness_m) / (n - 1);
    expect(count).toBeGreaterThan(sink.finCount);
    expect(gap(width_m, count)).toBeGreaterThanOrEqual(gap(sink.width_m, sink.finCount));
    expect(gap(width_m, count + 1)).toBeLessThan(gap(sink.width_m, sink.finCount));
  });
});

describe('resistors', () => {
  test('are turned round every second, or one half of the row', () => {
    expect(Object.keys(change(eight, 'flipAlternate')?.values ?? {})).toEqual(
      [1, 3, 5, 7].map((index) => `positions[${index}].flipped`),
    );
    expect(Object.keys(change(eight, 'flipOutward')?.values ?? {})).toEqual(
      [4, 5, 6, 7].map((index) => `positions[${index}].flipped`),
    );
  });

  test('share the watts evenly, those that were off too, and no watt is lost', () => {
    const uneven: Design = {
      ...eight,
      positions: eight.positions.map((position, i) => ({ ...position, on: i > 1, power_W: i })),
    };
    const values = change(uneven, 'spreadEvenly')?.values ?? {};
    const total = eight.positions.reduce((sum, _, i) => sum + Number(values[`positions[${i}].power_W`]), 0);
    expect(total).toBeCloseTo(27, 9);
    expect(values['positions[0].on']).toBe(true);
    expect(change(eight, 'spreadEvenly')).toBeUndefined();
  });

  test('hand watts from the hottest to the coolest, and no watt is lost', () => {
    const uneven: Design = {
      ...eight,
      positions: eight.positions.map((position, i) => ({ ...position, power_W: i === 3 ? 6 : 3 })),
    };
    const { values } = change(uneven, 'moveWatts') ?? { values: {} as Change['values'] };
    const [hot = '', , cool = ''] = Object.keys(values);
    expect(hot).toBe('positions[3].power_W');
    expect(Number(values[hot]) + Number(values[cool])).toBeCloseTo(9, 9);
    expect(Number(values[hot])).toBeGreaterThan(3);
    expect(change(uneven, 'swapPlaces')?.values).toMatchObject({ [hot]: 3, [cool]: 6 });
  });

  test('carry a tenth less, whatever makes their watts', () => {
    expect(change(eight, 'lessLoad')?.values['positions[7].power_W']).toBe(3.6);
    const amps = exampleById('onePair');
    expect(Number(change(amps, 'lessLoad')?.values['load.supply_A']) ** 2).toBeCloseTo(0.9 * 0.4 ** 2, 4);
    const volts = exampleById('twoDozen');
    expect(Number(change(volts, 'lessLoad')?.values['load.supply_V']) ** 2).toBeCloseTo(0.9 * 12 ** 2, 0);
  });
});

test('a design without an answer is offered what needs none', () => {
  const still = { ...defaultDesign, fan: { ...defaultDesign.fan, supply_V: 0 } };
  const keys = changes(still).map(({ key }) => key);
  expect(keys).toContain('fanRated');
  expect(keys).not.toContain('moveWatts');
});
