import { describe, expect, test } from 'vitest';
import { defaultDesign } from '../../../../src/model/defaults.ts';
import { setAt } from '../../../../src/model/path.ts';
import { presentValues, standingOf, writesOf } from '../../../../src/model/shelf/standing.ts';

const soft = { name: 'Soft', values: { k_WPerMK: 200, heat_JPerM3K: 2.42e6 } };
const hard = { name: 'Hard', values: { k_WPerMK: 120, heat_JPerM3K: 2.42e6 } };
const called = (material: string) => setAt(defaultDesign, 'sink.material', material);
const standing = (design: unknown) => standingOf(design, 'alloy', 'sink', [soft, hard]);

describe('where the present values stand to the shelf', () => {
  test('as an entry, if its name and all of its values stand there, however the name is spelt', () => {
    expect(standing(called(' soft '))).toEqual({ how: 'as', names: ['Soft'], named: true });
  });

  test('with the values of an entry, if only the name is another', () => {
    expect(standing(called('Mine'))).toEqual({ how: 'as', names: ['Soft'], named: false });
  });

  test('changed, if the name is there and values differ', () => {
    expect(standing(called('Hard'))).toEqual({ how: 'changed', name: 'Hard', keys: ['k_WPerMK'] });
  });

  test('apart, if neither is there', () => {
    expect(standing(setAt(called('Mine'), 'sink.k_WPerMK', 150))).toEqual({ how: 'other' });
  });

  test('as every entry with these values, where the design has no name for it', () => {
    const twins = [
      { name: 'A', values: { tab_WPerMK: 390 } },
      { name: 'B', values: { tab_WPerMK: 390 } },
    ];
    expect(standingOf(defaultDesign, 'tab', 'secondFace', twins)).toEqual({
      how: 'as',
      names: ['A', 'B'],
      named: true,
    });
  });

  test('the same after a change of unit has left dust in the seventh digit', () => {
    const sheet = [{ name: '3 mm', values: { sheet_m: 0.003 } }];
    const typed = setAt(defaultDesign, 'baffle.sheet_m', 0.1181102 * 0.0254);
    expect(standingOf(typed, 'thickness', 'baffle', sheet)).toMatchObject({ how: 'as' });
    const other = setAt(defaultDesign, 'baffle.sheet_m', 0.003001);
    expect(standingOf(other, 'thickness', 'baffle', sheet)).toEqual({ how: 'other' });
  });
});

describe('choosing an entry', () => {
  test('writes its values, and its name where the design has a text for it', () => {
    expect(writesOf('alloy', 'sink', hard)).toEqual({
      'sink.material': 'Hard',
      'sink.k_WPerMK': 120,
      'sink.heat_JPerM3K': 2.42e6,
    });
    expect(writesOf('thickness', 'box', { name: '3 mm', values: { sheet_m: 0.003 } })).toEqual({
      'box.sheet_m': 0.003,
    });
  });

  test('can be undone by an entry made of the present values', () => {
    expect(presentValues(defaultDesign, 'alloy', 'sink')).toEqual(soft.values);
  });
});
