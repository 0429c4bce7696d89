import { describe, expect, test } from 'vitest';
import { checkDesign } from '../../../../src/model/check.ts';
import { eightResistors } from '../../../../src/model/examples/eightResistors.ts';
import { bringBack } from '../../../../src/studies/tolerance/bringBack.ts';
import { draftOf } from '../../../../src/studies/tolerance/draft.ts';
import { placesOf } from '../../../../src/studies/tolerance/places.ts';

const fresh = () => draftOf(eightResistors, false);

describe('a box that cannot be built as drawn', () => {
  test('is left alone where it can', () => {
    const { design } = fresh();
    expect(bringBack(design, [])).toBe(false);
    expect(design).toEqual({ ...eightResistors, spreads: [] });
  });

  test('has the measure that does not fit taken as near as it fits', () => {
    const { design } = fresh();
    design.baffle.sideClearance_m = 0.02;
    expect(bringBack(design, [])).toBe(true);
    expect(design.baffle.sideClearance_m).toBeCloseTo((0.045 - 0.025) / 2, 12);
    expect(checkDesign(design)).toEqual([]);
  });

  test.each([
    [
      'collar',
      (d: ReturnType<typeof fresh>['design']) => {
        d.baffle.collar_m = 0.03;
      },
    ],
    [
      'fins too thick',
      (d: ReturnType<typeof fresh>['design']) => {
        d.sink.finThickness_m = 0.0029;
      },
    ],
    [
      'sinks wider than the box',
      (d: ReturnType<typeof fresh>['design']) => {
        d.sink.width_m = 0.05;
      },
    ],
    [
      'row longer than the box',
      (d: ReturnType<typeof fresh>['design']) => {
        d.sink.finHeight_m = 0.02;
      },
    ],
    [
      'chips longer than a sink',
      (d: ReturnType<typeof fresh>['design']) => {
        for (const part of d.parts) part.length_m = 0.03;
      },
    ],
    [
      'tabs larger than their chip',
      (d: ReturnType<typeof fresh>['design']) => {
        d.secondFace.tabWidth_m = 0.01;
      },
    ],
    [
      'filament longer than a chip takes',
      (d: ReturnType<typeof fresh>['design']) => {
        d.bond.filamentLength_m = 0.4;
      },
    ],
  ])('can be built afterwards: %s', (_, spoil) => {
    const { design } = fresh();
    spoil(design);
    expect(checkDesign(design)).not.toEqual([]);
    expect(bringBack(design, [])).toBe(true);
    expect(checkDesign(design)).toEqual([]);
  });

  test('goes back towards the drawing where nothing else helps', () => {
    const draft = fresh();
    const places = placesOf(draft, eightResistors, 'fan.hub_m', false).flatMap((each) => each.places);
    draft.design.fan.hub_m = 0.2;
    expect(bringBack(draft.design, places)).toBe(true);
    expect(checkDesign(draft.design)).toEqual([]);
    expect(draft.design.fan.hub_m).toBeGreaterThan(eightResistors.fan.hub_m);
    expect(draft.design.fan.hub_m).toBeLessThan(draft.design.fan.opening_m);
  });
});
