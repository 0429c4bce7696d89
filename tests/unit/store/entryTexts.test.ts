import { describe, expect, test } from 'vitest';
import { readEntryTexts, valueBoxes, valueTexts } from '../../../src/store/entryTexts.ts';

const before = { length_m: 0.0063512345678, width_m: 0.0032, thickness_m: 0.0006 };
const read = (texts: Record<string, string>, system: 'metric' | 'inch' = 'metric', taken: string[] = []) =>
  readEntryTexts(
    { name: 'My chip', source: '', remark: '', ...valueTexts(before, 'chip', 'parts[0]', system), ...texts },
    'chip',
    'parts[0]',
    system,
    before,
    taken,
  );

describe('an entry as typed', () => {
  test('begins with the values as somebody would type them, in the units shown', () => {
    expect(valueBoxes('chip', 'parts[0]', 'metric').map(({ label, unit }) => `${label} ${unit}`)).toEqual([
      'Chip length mm',
      'Chip width mm',
      'Chip thickness mm',
    ]);
    expect(valueTexts(before, 'chip', 'parts[0]', 'inch')).toMatchObject({ width_m: '0.1259843' });
  });

  test.each(['metric', 'inch'] as const)('keeps the last digit of what nobody touched (%s)', (system) => {
    expect(read({}, system)).toMatchObject({ ok: true, entry: { name: 'My chip', values: before } });
  });

  test('reads what was typed in any unit', () => {
    expect(read({ width_m: '1/8 in', name: '  Other  ' })).toMatchObject({
      ok: true,
      entry: { name: 'Other', values: { width_m: 0.003175 } },
    });
  });

  test.each([
    [{ width_m: 'abc' }, 'width_m', 'not a number'],
    [{ width_m: '3 m' }, 'width_m', 'Out of bounds'],
    [{ name: ' ' }, 'name', 'needs a name'],
    [{ name: 'x'.repeat(61) }, 'name', 'at most 60'],
    [{ remark: 'x'.repeat(301) }, 'remark', 'at most 300'],
    [{ name: 'TAKEN' }, 'name', 'of this name already'],
  ])('tells what is wrong with %j', (texts, key, reason) => {
    expect(read(texts, 'metric', ['Taken'])).toEqual({
      ok: false,
      problems: { [key]: expect.stringContaining(reason) },
    });
  });
});
