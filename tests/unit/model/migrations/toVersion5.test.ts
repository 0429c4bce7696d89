import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { unitFactors } from '../../../../src/core/system/input.ts';
import { anotherFan, defaultDesign } from '../../../../src/model/defaults.ts';
import { migrate, migrations } from '../../../../src/model/migrations/migrate.ts';
import { readDesign } from '../../../../src/model/readDesign.ts';
import { toCore } from '../../../../src/model/toCore.ts';
import { oneReadingEach } from '../../../helpers/readings.ts';

const frozen = new URL('../../../fixtures/designs/v4/', import.meta.url);
const files = readdirSync(frozen).map((file) => ({
  file,
  raw: JSON.parse(readFileSync(new URL(file, frozen), 'utf8')) as Record<string, unknown>,
}));

describe('from version 4 to version 5', () => {
  test.each(files)('$file keeps every value it had; nothing was read, nothing fitted', ({ raw }) => {
    const { version: _, fan: oldFan, ...said } = raw;
    const migrated = migrate(raw, migrations, 5);
    if (!migrated.ok) throw new Error(migrated.reason);
    const { version, readings, fitted, fan, ...rest } = migrated.raw;
    expect(version).toBe(5);
    expect(readings).toEqual(defaultDesign.readings);
    expect(fitted).toEqual(defaultDesign.fitted);
    expect(fan).toEqual({ ...(oldFan as object), curveSource: '' });
    expect(rest).toEqual(said);
  });

  test.each(files)('$file opens without a note and is told to the core as it was', ({ raw }) => {
    const read = readDesign(raw);
    if (!read.ok) throw new Error(read.problems[0]?.reason);
    expect(read.notes).toEqual([]);
    expect(toCore(read.design).factors).toEqual(unitFactors);
  });

  test('gives other fans a place for the source of their curve too', () => {
    const { curveSource: _, ...other } = anotherFan(defaultDesign.fan, 0);
    expect(migrate({ version: 4, moreFans: [other] })).toMatchObject({
      raw: { moreFans: [{ ...other, curveSource: '' }] },
    });
  });

  test('leaves what is no fan for the schema to refuse', () => {
    expect(migrate({ version: 4, fan: 'none', moreFans: 3 })).toMatchObject({
      raw: { fan: 'none', moreFans: 3 },
    });
  });

  test('readings tell the core nothing: they are read of a box, not put into it', () => {
    expect(toCore({ ...defaultDesign, readings: oneReadingEach })).toEqual(toCore(defaultDesign));
  });

  test('what was fitted is told to the core as factors on results of methods', () => {
    const fitted = {
      ...defaultDesign.fitted,
      bondFactor: 0.8,
      slotFactor: 1.3,
      fanFactor: 0.95,
      emissivityFactor: 1.1,
    };
    expect(toCore({ ...defaultDesign, fitted }).factors).toEqual({
      ...unitFactors,
      bondConductivity: 0.8,
      slotLoss: 1.3,
      fanFlow: 0.95,
      emissivity: 1.1,
    });
  });
});
