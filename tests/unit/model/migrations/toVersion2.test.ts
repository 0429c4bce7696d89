import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { currentVersion, migrate } from '../../../../src/model/migrations/migrate.ts';
import { readDesign } from '../../../../src/model/readDesign.ts';
import { toCore } from '../../../../src/model/toCore.ts';

const frozen = new URL('../../../fixtures/designs/v1/', import.meta.url);
const files = readdirSync(frozen).map((file) => ({
  file,
  raw: JSON.parse(readFileSync(new URL(file, frozen), 'utf8')) as Record<string, unknown>,
}));

describe('from version 1 to version 2', () => {
  test.each(files)('$file keeps every value it had', ({ raw }) => {
    const { version: _, ...said } = raw;
    expect(migrate(raw)).toMatchObject({ ok: true, raw: { ...said, version: currentVersion } });
  });

  test.each(files)('$file is told to the core as one clean fan, upright, by its altitude', ({ raw }) => {
    const read = readDesign(raw);
    if (!read.ok) throw new Error(read.problems[0]?.reason);
    const input = toCore(read.design);
    expect(input.room.pressure_Pa).toBeNull();
    expect(input.fan).toMatchObject({ sideBySide: 1, inARow: 1, others: [], supplySag: 0, speedLoss: 0 });
    expect(input.inlet.guard.blocked).toBe(0);
    expect(input.box.tilt_rad).toBe(0);
    expect(input.limits.soundJudged).toBe(false);
    for (const { part } of input.positions) expect(part.tcr2_perK2).toBe(0);
    expect(read.notes[0]).toContain('version 1');
  });

  test('does not write over a value that stands there already, nor drop one', () => {
    const raw = { version: 1, room: { listening_m: 3, T_K: 300 }, moreFans: ['one'] };
    expect(migrate(raw)).toMatchObject({ raw: { room: { listening_m: 3, T_K: 300 }, moreFans: ['one'] } });
  });

  test.each([[null], ['text'], [3], [[]], [undefined]])(
    'leaves %j for the schema to refuse where a group of values should stand',
    (room) => {
      const raw = { format: 'throughfin-design', version: 1, room, parts: [room] };
      const migrated = migrate(raw);
      expect(migrated.ok && migrated.raw.room).toEqual(room);
      const read = readDesign(raw);
      expect(read.ok ? [] : read.problems.map(({ path }) => path)).toContain('room');
    },
  );

  test('tells a name that version 1 did not know', () => {
    const [first] = files;
    const read = readDesign({ ...first?.raw, colour: 'red' });
    expect(read).toMatchObject({ ok: false, problems: [{ path: 'colour' }] });
  });
});
