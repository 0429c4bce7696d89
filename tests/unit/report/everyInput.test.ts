import { describe, expect, test } from 'vitest';
import type { Design } from '../../../src/model/design.ts';
import { exampleById } from '../../../src/model/examples/examples.ts';
import { fields } from '../../../src/model/fields.ts';
import { everyInput } from '../../../src/report/everyInput.ts';
import { everyInputTables } from '../../../src/report/tables.ts';
import { oneReadingEach } from '../../helpers/readings.ts';
import { exampleIds, sampleExample } from '../../helpers/sampleReport.ts';

const eight = exampleById('eightResistors');
const plain = (text: string) => text.replaceAll('\u202f', ' ');
const find = (design: Design, title: string, system: 'metric' | 'inch' = 'metric') => {
  const sheet = everyInput(design, system).find((each) => each.title === title);
  if (!sheet) throw new Error(`no ${title}`);
  return sheet;
};

/** With a row in every list, so that no field can hide. */
const full: Design = {
  ...eight,
  moreFans: [
    {
      name: 'Invented helper',
      place: 'beside',
      rated_V: 12,
      supply_V: 12,
      start_V: 5,
      power_W: 2,
      rotation_PerS: 40,
      opening_m: 0.05,
      hub_m: 0.02,
      blades: 7,
      standingLoss: 8,
      sound_dBA: 30,
      soundAt_m: 1,
      curveSource: 'an invented sheet',
      curve: eight.fan.curve,
    },
  ],
  extras: [
    {
      name: 'An elbow',
      place: 'inlet',
      loss: 1.5,
      area_m2: 0.002,
      points: [
        { flow_m3PerS: 0.001, dp_Pa: 1 },
        { flow_m3PerS: 0.002, dp_Pa: 4 },
      ],
    },
  ],
  readings: oneReadingEach,
  spreads: [{ path: 'room.T_K', kind: 'normal', relative: false, size: 1 }],
};

describe('every input', () => {
  test('has a place for each field of the schema, by its label', () => {
    const sheets = everyInput(full, 'metric');
    const said = sheets.flatMap(({ heads, rows }) => [...heads, ...rows.map(([label]) => label)]);
    for (const { pattern, label } of fields) expect(said, pattern).toContain(label);
    const cells = sheets.reduce((sum, { heads, rows }) => sum + rows.length * (heads.length - 1), 0);
    const rowsOf = (list: string) =>
      fields.filter(
        ({ pattern }) => pattern.startsWith(`${list}[].`) && !pattern.slice(list.length + 3).includes('[]'),
      ).length;
    const expected =
      fields.filter(({ pattern }) => !pattern.includes('[]')).length +
      rowsOf('parts') * full.parts.length +
      rowsOf('positions') * full.positions.length +
      2 * full.fan.curve.length +
      rowsOf('moreFans') +
      2 * (full.moreFans[0]?.curve.length ?? 0) +
      rowsOf('extras') +
      2 * 2 +
      rowsOf('spreads') +
      Object.keys(oneReadingEach).reduce((sum, list) => sum + rowsOf(`readings.${list}`), 0);
    expect(cells).toBe(expected);
  });

  test('says values in the units of the reader', () => {
    const row = (title: string, label: string, system: 'metric' | 'inch') =>
      plain(find(eight, title, system).rows.find(([name]) => name === label)?.[1] ?? '');
    expect(row('Sinks', 'Fin length', 'metric')).toBe('25 mm');
    expect(row('Sinks', 'Fin length', 'inch')).toBe('0.9843 in');
    expect(row('Room', 'Room temperature', 'inch')).toBe('104 °F');
    expect(row('Baffle', 'Baffle fitted', 'metric')).toBe('yes');
    expect(row('Second face', 'Second face', 'metric')).toBe('tabs soldered to the terminals');
  });

  test('sets many kinds of resistor in blocks of four, and names the kind of each position', () => {
    const part = eight.parts[0] as Design['parts'][number];
    const many = { ...eight, parts: Array.from({ length: 32 }, (_, i) => ({ ...part, name: `Kind ${i}` })) };
    const blocks = everyInput(many, 'metric').filter(({ title }) => title === 'Kinds of resistor');
    expect(blocks.map(({ heads }) => heads.length - 1)).toEqual(Array.from({ length: 8 }, () => 4));
    expect(blocks.at(-1)?.heads.at(-1)).toBe('No. 32');
    expect(find(many, 'Resistors along the row').rows[0]?.[1]).toBe('No. 1, Kind 0');
  });

  test.each(exampleIds)('makes tables of %s with a cell under every head, each of its own name', (id) => {
    const tables = everyInputTables(sampleExample(id).report);
    expect(new Set(tables.map((table) => table.id)).size).toBe(tables.length);
    for (const { columns, rows } of tables)
      for (const cells of rows) expect(cells).toHaveLength(columns.length);
  });
});
