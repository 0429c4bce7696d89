import { describe, expect, test } from 'vitest';
import { closeRow, openRow, without, withoutRows } from '../../../src/store/drafts.ts';

const typed = {
  'sink.length_m': 'a',
  'rows[0].x': 'b',
  'rows[1].x': 'c',
  'rows[10].x.y[1]': 'd',
  'rowsToo[1].x': 'e',
  'each rows[].x': 'f',
};

describe('what was typed', () => {
  test('moves along when a row opens before it', () => {
    expect(openRow(typed, 'rows', 1)).toEqual({
      'sink.length_m': 'a',
      'rows[0].x': 'b',
      'rows[2].x': 'c',
      'rows[11].x.y[1]': 'd',
      'rowsToo[1].x': 'e',
      'each rows[].x': 'f',
    });
  });

  test('goes with its row, and the rows after it close up', () => {
    expect(closeRow(typed, 'rows', 1)).toEqual({
      'sink.length_m': 'a',
      'rows[0].x': 'b',
      'rows[9].x.y[1]': 'd',
      'rowsToo[1].x': 'e',
      'each rows[].x': 'f',
    });
  });

  test('is dropped for a place and all within it, and for no place of a similar name', () => {
    expect(Object.keys(without(typed, 'rows'))).toEqual(['sink.length_m', 'rowsToo[1].x', 'each rows[].x']);
    expect(Object.keys(without(typed, 'rows[1]'))).not.toContain('rows[1].x');
    expect(Object.keys(without(typed, 'rows[1]'))).toContain('rows[10].x.y[1]');
  });

  test('is dropped for all rows, but not for columns', () => {
    expect(Object.keys(withoutRows(typed))).toEqual(['sink.length_m', 'each rows[].x']);
  });
});
