import { describe, expect, test } from 'vitest';
import { parseShelfText, serialiseShelf } from '../../../src/io/shelfFile.ts';
import { ownEntry } from '../../helpers/ownEntry.ts';

describe('a file of entries', () => {
  test('opens as it was saved, to the last digit', () => {
    const entries = [
      ownEntry({ values: { k_WPerMK: 180.123456789012, heat_JPerM3K: 2.4e6 } }),
      ownEntry({ id: 'b' }),
    ];
    expect(parseShelfText(serialiseShelf(entries))).toEqual({ ok: true, entries });
  });

  test.each([
    ['', 'The file is empty.'],
    ['{\n  oops\n}', 'line 2, column 3'],
    ['{"format": "throughfin-design"}', 'should be "throughfin-shelf"'],
  ])('that reads %j is refused with its place', (text, reason) => {
    const read = parseShelfText(text);
    expect(read.ok ? '' : read.problems[0]?.reason).toContain(reason);
  });
});
