import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { defaultDesign } from '../../../../src/model/defaults.ts';
import { migrate, migrations } from '../../../../src/model/migrations/migrate.ts';
import { readDesign } from '../../../../src/model/readDesign.ts';
import { toCore } from '../../../../src/model/toCore.ts';

const frozen = new URL('../../../fixtures/designs/v3/', import.meta.url);
const files = readdirSync(frozen).map((file) => ({
  file,
  raw: JSON.parse(readFileSync(new URL(file, frozen), 'utf8')) as Record<string, unknown>,
}));

describe('from version 3 to version 4', () => {
  test.each(files)('$file keeps every value it had and has the usual spreads', ({ raw }) => {
    const { version: _, ...said } = raw;
    const migrated = migrate(raw, migrations, 4);
    if (!migrated.ok) throw new Error(migrated.reason);
    const { version, spreads, ...rest } = migrated.raw;
    expect(version).toBe(4);
    expect(spreads).toEqual([]);
    expect(rest).toEqual(said);
  });

  test.each(files)('$file opens without a note: a new design has the same spreads', ({ raw }) => {
    const read = readDesign(raw);
    if (!read.ok) throw new Error(read.problems[0]?.reason);
    expect(read.notes).toEqual([]);
  });

  test('tells the core nothing: the answer is that of the same box', () => {
    const spreads = [{ path: 'room.T_K', kind: 'normal', relative: false, size: 3 }] as const;
    expect(toCore({ ...defaultDesign, spreads: [...spreads] })).toEqual(toCore(defaultDesign));
  });
});
