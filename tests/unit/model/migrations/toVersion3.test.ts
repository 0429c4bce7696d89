import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { defaultDesign } from '../../../../src/model/defaults.ts';
import { migrate, migrations } from '../../../../src/model/migrations/migrate.ts';
import { readDesign } from '../../../../src/model/readDesign.ts';
import { toCore } from '../../../../src/model/toCore.ts';

const frozen = new URL('../../../fixtures/designs/v2/', import.meta.url);
const files = readdirSync(frozen).map((file) => ({
  file,
  raw: JSON.parse(readFileSync(new URL(file, frozen), 'utf8')) as Record<string, unknown>,
}));

describe('from version 2 to version 3', () => {
  test.each(files)('$file keeps every value it had and gains only how to cut the sheet', ({ raw }) => {
    const { version: _, ...said } = raw;
    const migrated = migrate(raw, migrations, 3);
    if (!migrated.ok) throw new Error(migrated.reason);
    const { version: __, variant, cutting, ...rest } = migrated.raw;
    expect(variant).toBe('');
    expect(rest).toEqual(said);
    expect(cutting).toMatchObject({ boxes: 1, joint: 'butt', wireHole_m: 0, fanPitch_m: 0 });
  });

  test.each(files)('$file opens with one note about it', ({ raw }) => {
    const read = readDesign(raw);
    if (!read.ok) throw new Error(read.problems[0]?.reason);
    expect(read.notes).toEqual([expect.stringContaining('how to cut')]);
  });

  test('does not write over a cutting section that stands there already', () => {
    const cutting = { ...defaultDesign.cutting, boxes: 7 };
    expect(migrate({ version: 2, cutting })).toMatchObject({ raw: { cutting } });
  });

  test('tells the core nothing: the answer is that of the same box', () => {
    const more = { ...defaultDesign.cutting, boxes: 12, joint: 'slotted', fit_m: 0.001 } as const;
    expect(toCore({ ...defaultDesign, cutting: more })).toEqual(toCore(defaultDesign));
  });
});
