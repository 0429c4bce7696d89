import { describe, expect, test } from 'vitest';
import type { LineChart } from '../../../src/report/lineChart.ts';
import {
  driftTable,
  fanStopTable,
  fansTable,
  lineChartTable,
  ratingsTable,
  reachedTable,
  reportTables,
} from '../../../src/report/tables.ts';
import { exampleIds, sampleExample, sampleOf, sampleWithoutAnswer } from '../../helpers/sampleReport.ts';

const heads = (table: { readonly columns: readonly { readonly head: string }[] }) =>
  table.columns.map(({ head }) => head);
const ids = (tables: readonly { readonly id: string }[]) => tables.map(({ id }) => id);

const chart: LineChart = {
  id: 'made',
  caption: 'Made for a test',
  xLabel: 'room',
  xUnit: '°C',
  yUnit: 'W',
  lines: [
    {
      key: 'running',
      label: 'with fan',
      style: 'solid',
      points: [
        { x: 0, y: 38.03 },
        { x: 10, y: 35.56 },
      ],
    },
    {
      key: 'stopped',
      label: 'without',
      style: 'dashed',
      points: [
        { x: 0, y: 6.966 },
        { x: 10, y: null },
      ],
    },
  ],
  levels: [],
  marks: [],
  xTicks: [0, 10],
  yTicks: [0, 40],
  spoken: '',
};

describe('the table of a chart of lines', () => {
  test('has a column of numbers for the axis and for every line, each under its unit', () => {
    const table = lineChartTable(chart);
    expect([table.id, table.caption]).toEqual(['made', 'Made for a test']);
    expect(heads(table)).toEqual(['room, °C', 'with fan, W', 'without, W']);
    expect(table.columns.every(({ align }) => align === 'end')).toBe(true);
  });

  test('has a row for every place, and says where there is no answer', () => {
    expect(lineChartTable(chart).rows).toEqual([
      ['0', '38', '6.97'],
      ['10', '35.6', 'no answer'],
    ]);
  });

  test.each(exampleIds)('carries every point of every chart of %s', (id) => {
    const { derating } = sampleExample(id).report;
    for (const drawn of [derating?.overAmbient, derating?.overAltitude, derating?.overSupply]) {
      const table = lineChartTable(drawn ?? chart);
      expect(table.rows).toHaveLength(drawn?.lines[0]?.points.length ?? 0);
      for (const row of table.rows) expect(row).toHaveLength((drawn?.lines.length ?? 0) + 1);
    }
  });
});

describe.each(exampleIds)('the tables of a bad day in %s', (id) => {
  const { report } = sampleExample(id);

  test('say of the ratings, the limits and the moments what the report says', () => {
    const { ratings, reached, times, heads: named } = report.fanStop;
    expect(ratingsTable(report).rows).toEqual(
      ratings.map(({ label, total, each, boundBy, word }) => [label, total, each, boundBy, word]),
    );
    expect(reachedTable(report).rows).toEqual(reached.map(({ label, time }) => [label, time]));
    expect(fanStopTable(report).rows).toEqual(
      times.map(({ time, cells }) => [time, ...cells].map(({ text }) => text)),
    );
    expect(heads(fanStopTable(report))).toEqual(named);
  });

  test('name the closeness that counts as settled over the column of times', () => {
    expect(heads(driftTable(report)).at(-1)).toBe(`Within ${report.drift?.within} after`);
    expect(driftTable(report).rows).toHaveLength(report.drift?.rows.length ?? 0);
  });

  test('have one row for every kind of fan', () => {
    expect(fansTable(report).rows.map(([label]) => label)).toEqual(
      report.air?.fans.map(({ label }) => label),
    );
  });
});

describe('all tables together', () => {
  test('stand under ids of their own, those of charts without other twins at the end', () => {
    const { report } = sampleExample('eightResistors');
    const all = ids(reportTables(report));
    expect(new Set(all).size).toBe(all.length);
    expect(all).toEqual(expect.arrayContaining(['fans', 'drift', 'ratings', 'reached', 'fanStop']));
    expect(all.slice(-3)).toEqual(['overAmbient', 'overAltitude', 'overSupply']);
    const { design } = sampleExample('onePair');
    const pulsed = sampleOf({ ...design, load: { ...design.load, duty: 0.25 } }).report;
    expect(ids(reportTables(pulsed)).at(-1)).toBe('pulse');
  });

  test('of a design without an answer: the ratings, and nothing of a box that does not run', () => {
    const all = ids(reportTables(sampleWithoutAnswer().report));
    expect(all).toContain('ratings');
    for (const gone of ['reached', 'fanStop', 'drift', 'fans', 'overAmbient', 'overSupply'])
      expect(all).not.toContain(gone);
  });
});
