import { describe, expect, test } from 'vitest';
import { currentVersion, migrate, migrations } from '../../../../src/model/migrations/migrate.ts';
import type { Migration } from '../../../../src/model/migrations/migration.ts';

const steps: Migration[] = [
  { from: 1, to: 2, apply: (raw) => ({ raw: { ...raw, second: true }, notes: ['Two came.'] }) },
  { from: 2, to: 3, apply: ({ old: _, ...raw }) => ({ raw: { ...raw, third: true }, notes: [] }) },
];

describe('migration', () => {
  test('leads from every version to the next without a gap', () => {
    expect(migrations.map(({ from }) => from)).toEqual(
      Array.from({ length: currentVersion - 1 }, (_, i) => i + 1),
    );
    for (const { from, to } of migrations) expect(to).toBe(from + 1);
  });

  test('leaves the current version as it is', () => {
    const raw = { version: currentVersion, anything: 'stays' };
    expect(migrate(raw)).toEqual({ ok: true, raw, notes: [] });
  });

  test('takes every step on the way, in order, and keeps their notes', () => {
    expect(migrate({ version: 1, old: 'x', kept: 4 }, steps, 3)).toEqual({
      ok: true,
      raw: { version: 3, kept: 4, second: true, third: true },
      notes: ['Two came.'],
    });
  });

  test.each([[undefined], [null], ['1'], [0], [-1], [1.5], [Number.NaN]])(
    'refuses %s for a version',
    (version) => {
      expect(migrate({ version })).toMatchObject({ ok: false, reason: expect.stringContaining('version') });
    },
  );

  test('refuses a version newer than it knows, and says which it reads', () => {
    expect(migrate({ version: 7 })).toEqual({
      ok: false,
      reason: 'Version 7 is newer than this copy knows; it reads versions 1 to 5.',
    });
  });

  test('refuses where a step is missing', () => {
    expect(migrate({ version: 1 }, steps.slice(1), 3)).toMatchObject({ ok: false });
  });
});
