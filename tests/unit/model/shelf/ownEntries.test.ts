import { describe, expect, test } from 'vitest';
import { mostEntries, readOwnEntry, readShelf } from '../../../../src/model/shelf/ownEntries.ts';
import { ownEntry } from '../../../helpers/ownEntry.ts';

const file = (...entries: unknown[]) => ({ format: 'throughfin-shelf', version: 1, entries });

describe('a shelf as saved', () => {
  test('is read whole', () => {
    const entries = [ownEntry(), ownEntry({ id: 'two', kind: 'thickness', values: { sheet_m: 0.0032 } })];
    expect(readShelf(file(...entries))).toEqual({ ok: true, entries });
    expect(readShelf(file())).toEqual({ ok: true, entries: [] });
  });

  test.each([
    ['a text', 'format', 'throughfin-shelf'],
    [{ format: 'throughfin-design', version: 2 }, 'format', 'throughfin-shelf'],
    [{ ...file(), version: 2 }, 'version', 'has to be 1, and is 2'],
    [{ ...file(), entries: {} }, 'entries', 'A list'],
    [{ ...file(), more: 1 }, 'more', 'not known'],
    [file(...Array.from({ length: mostEntries + 1 }, () => ownEntry())), 'entries', 'at most 500'],
  ])('that is %j is refused at %s: %s', (raw, path, reason) => {
    const read = readShelf(raw);
    expect(read.ok ? [] : read.problems).toEqual([{ path, reason: expect.stringContaining(reason) }]);
  });

  test('is refused whole, every fault with its place, if only one entry is wrong', () => {
    const wrong = ownEntry({ values: { k_WPerMK: 2000, heat_JPerM3K: 2.4e6 }, name: ' ' });
    const read = readShelf(file(ownEntry(), wrong));
    expect(read.ok ? [] : read.problems.map(({ path }) => path)).toEqual([
      'entries[1].name',
      'entries[1].values.k_WPerMK',
    ]);
  });
});

describe('one entry', () => {
  const told = (change: object) => {
    const read = readOwnEntry({ ...ownEntry(), ...change }, 'at');
    return read.ok ? [] : read.problems.map(({ path, reason }) => `${path}: ${reason}`);
  };

  test.each([
    [{ kind: 'glue' }, 'at.kind: Allowed is "alloy"'],
    [{ name: 'x'.repeat(61) }, 'at.name: Allowed is a text of 1 to 60 characters.'],
    [{ source: undefined }, 'at.source: This is missing. Allowed is a text of at most 200 characters.'],
    [
      { values: { k_WPerMK: 2000, heat_JPerM3K: 2.4e6 } },
      'at.values.k_WPerMK: This cannot be 2000. Allowed is 1 to 500',
    ],
    [{ values: { k_WPerMK: '180', heat_JPerM3K: 2.4e6 } }, 'at.values.k_WPerMK: This cannot be "180"'],
    [{ values: { k_WPerMK: 180 } }, 'at.values.heat_JPerM3K: This is missing.'],
    [{ values: { k_WPerMK: 180, heat_JPerM3K: 2.4e6, emissivity: 1 } }, 'at.values.emissivity: This name'],
    [{ values: [] }, 'at.values: The values'],
    [{ maker: 'x' }, 'at.maker: This name is not known here.'],
  ])('with %j is refused', (change, expected) => {
    expect(told(change)).toHaveLength(1);
    expect(told(change)[0]).toContain(expected);
  });

  test('that is none at all is refused', () => {
    expect(readOwnEntry(null, 'at')).toMatchObject({ ok: false, problems: [{ path: 'at' }] });
  });
});
