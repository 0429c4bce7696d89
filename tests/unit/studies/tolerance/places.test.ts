import { describe, expect, test } from 'vitest';
import { defaultPart } from '../../../../src/model/defaults.ts';
import type { Design } from '../../../../src/model/design.ts';
import { eightResistors } from '../../../../src/model/examples/eightResistors.ts';
import { draftOf } from '../../../../src/studies/tolerance/draft.ts';
import { placesOf } from '../../../../src/studies/tolerance/places.ts';

const two: Design = {
  ...eightResistors,
  parts: [...eightResistors.parts, { ...defaultPart, name: 'other' }, { ...defaultPart, name: 'unused' }],
  positions: eightResistors.positions.map((position, i) => ({ ...position, part: i % 2, on: i < 6 })),
};
const rows = (pattern: string, each = false) =>
  placesOf(draftOf(two, each), two, pattern, each).map(({ row, places }) => [row, places.length]);

describe('the places that one draw sets', () => {
  test('are one for an input that stands alone, with its bounds', () => {
    const [only, ...none] = placesOf(draftOf(two, false), two, 'baffle.slotWidth_m', false);
    expect(none).toEqual([]);
    expect(only?.places).toMatchObject([
      { key: 'slotWidth_m', nominal: two.baffle.slotWidth_m, low: 5e-4, high: 0.5 },
    ]);
  });

  test('are all points of a curve together', () => {
    expect(rows('fan.curve[].flow_m3PerS')).toEqual([[0, two.fan.curve.length]]);
  });

  test('are one for each position that is on', () => {
    expect(rows('positions[].power_W')).toEqual([0, 1, 2, 3, 4, 5].map((row) => [row, 1]));
  });

  test('are one for each kind of part that sits somewhere', () => {
    expect(rows('parts[].ceramic_WPerMK')).toEqual([
      [0, 1],
      [1, 1],
    ]);
  });

  test('are one for each resistor, where equal ones may differ, and one for all copies of a kind', () => {
    expect(rows('parts[].R_Ohm', true)).toEqual([0, 1, 0, 1, 0, 1].map((row) => [row, 1]));
    const draft = draftOf(two, true);
    expect(
      placesOf(draft, two, 'parts[].ceramic_WPerMK', false).map(({ row, places }) => [row, places.length]),
    ).toEqual([
      [0, 3],
      [1, 3],
    ]);
  });
});
