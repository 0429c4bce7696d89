import { describe, expect, test } from 'vitest';
import type { Design } from '../../../../src/model/design.ts';
import { exampleById } from '../../../../src/model/examples/examples.ts';
import { differencesOf } from '../../../../src/studies/compare/differences.ts';

const eight = exampleById('eightResistors');
const between = (other: Partial<Design>) => differencesOf([eight, { ...eight, ...other }]);

describe('what differs between designs', () => {
  test('is nothing between a design and itself, under whatever name', () => {
    expect(differencesOf([eight, { ...eight }])).toEqual([]);
    expect(between({ title: 'Other', variant: 'B' })).toEqual([]);
  });

  test('is no dust of a change of unit', () => {
    const box = { ...eight.box, length_m: 5.905511811 * 0.0254 };
    expect(between({ box })).toEqual([]);
  });

  test('is one value after the other, in the order of the form', () => {
    const found = between({
      box: { ...eight.box, length_m: 0.2 },
      room: { ...eight.room, T_K: 300 },
      baffle: { ...eight.baffle, fitted: false },
    });
    expect(found).toEqual([
      { kind: 'value', path: 'room.T_K', values: [313.15, 300] },
      { kind: 'value', path: 'baffle.fitted', values: [true, false] },
      { kind: 'value', path: 'box.length_m', values: [0.15, 0.2] },
    ]);
  });

  test('of a row is told for the whole row at once', () => {
    const positions = eight.positions.map((position, i) => ({ ...position, flipped: i === 7 }));
    const [only, ...others] = between({ positions });
    expect(others).toEqual([]);
    expect(only).toMatchObject({ kind: 'along', key: 'flipped' });
  });

  test('of a longer row of the same is its length alone', () => {
    expect(between({ positions: eight.positions.slice(0, 6) })).toEqual([
      { kind: 'rows', list: 'positions', counts: [8, 6] },
    ]);
  });

  test('of a curve is that it differs, once', () => {
    const curve = eight.fan.curve.map((point, i) => (i === 2 ? { ...point, dp_Pa: 34 } : point));
    const found = between({ fan: { ...eight.fan, curve } });
    expect(found).toMatchObject([{ kind: 'points', path: 'fan.curve' }]);
  });

  test('of kinds and extras is told for those that all of them have', () => {
    const [part] = eight.parts;
    if (part === undefined) throw new Error('no part');
    const extra = { name: 'Hose', place: 'inlet' as const, loss: 2, area_m2: 0.001, points: [] };
    const found = between({
      parts: [
        { ...part, R_Ohm: 33 },
        { ...part, name: 'Other' },
      ],
      extras: [extra],
    });
    expect(found).toEqual([
      { kind: 'rows', list: 'parts', counts: [1, 2] },
      { kind: 'value', path: 'parts[0].R_Ohm', values: [22, 33] },
      { kind: 'rows', list: 'extras', counts: [0, 1] },
    ]);
  });
});
