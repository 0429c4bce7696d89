import { describe, expect, test } from 'vitest';
import { table } from '../../../src/report/makeTable.ts';
import { saidPercent, saidTemperature, saidWatts } from '../../../src/report/said.ts';
import { tableData } from '../../../src/report/tableData.ts';
import {
  fanStopTable,
  fansTable,
  figuresTable,
  intersectionsTable,
  limitsTable,
  positionsTable,
  ratingsTable,
  reachedTable,
  reportTables,
} from '../../../src/report/tables.ts';
import { exampleIds, sampleExample, sampleWithoutAnswer } from '../../helpers/sampleReport.ts';

const data = (heads: readonly string[], ...cells: Parameters<typeof table>[3]) =>
  tableData(table('t', 'T', heads, cells));

describe('a column of numbers', () => {
  test('holds bare numbers under its head and their unit', () => {
    expect(
      data(
        ['Position', '>Film'],
        ['a', saidTemperature(350.15, 'metric')],
        ['b', saidTemperature(300, 'metric')],
      ),
    ).toEqual({
      heads: ['Position', 'Film, °C'],
      rows: [
        ['a', 77],
        ['b', 26.85],
      ],
    });
  });

  test('takes the unit that the reader sees', () => {
    expect(data(['>Film'], [saidTemperature(310.15, 'inch')])).toEqual({
      heads: ['Film, °F'],
      rows: [[98.6]],
    });
  });

  test('whose unit changes has a column for the unit', () => {
    expect(data(['>Value'], [saidWatts(4, 'metric')], [saidPercent(0.02)])).toEqual({
      heads: ['Value', 'Value, unit'],
      rows: [
        [4, 'W'],
        [2, '%'],
      ],
    });
  });

  test('keeps its unit where all numbers are missing, and says nothing in their place', () => {
    expect(
      data(
        ['>Margin'],
        [{ text: '–', value: null, unit: 'K' }],
        [{ text: 'at once', value: null, unit: 'K' }],
      ),
    ).toEqual({ heads: ['Margin, K'], rows: [[null], [null]] });
    expect(data(['>With fan, W'], [{ text: '3', value: 3, unit: '' }], ['no answer'])).toEqual({
      heads: ['With fan, W'],
      rows: [[3], [null]],
    });
  });

  test('drops the noise of binary numbers and what is none', () => {
    const plain = (value: number) => ({ text: '', value, unit: '' });
    expect(data(['>x'], [plain(0.1 + 0.2)], [plain(Number.POSITIVE_INFINITY)], [plain(1 / 3)]).rows).toEqual([
      [0.3],
      [null],
      [0.3333333],
    ]);
  });
});

test('a column of words keeps them, with ordinary spaces, and leaves a dash out', () => {
  expect(data(['Input'], ['1.6\u202fmm'], ['–'], [''])).toEqual({
    heads: ['Input'],
    rows: [['1.6 mm'], [null], [null]],
  });
});

describe.each(exampleIds)('the tables of %s', (id) => {
  const { report, outcome } = sampleExample(id);

  test('carry the numbers of the answer, not those of the text', () => {
    if (!outcome.ok) throw new Error('an example has an answer');
    const { rows, heads } = tableData(positionsTable(report));
    expect(heads.slice(0, 3)).toEqual(['Position', 'Watts, W', 'Film, °C']);
    outcome.heat.positions.forEach((position, r) => {
      expect(rows[r]?.[1]).toBeCloseTo(position.power_W, 5);
      expect(rows[r]?.[2]).toBeCloseTo(position.film_K - 273.15, 4);
    });
    const limits = tableData(limitsTable(report));
    expect(limits.heads.slice(2, 8)).toEqual([
      'Value',
      'Value, unit',
      'Allowed',
      'Allowed, unit',
      'Margin, K',
      'Load up to, ×',
    ]);
    expect(limits.rows.map((row) => row[6] === null)).toEqual(
      outcome.limits.map(({ margin_K }) => margin_K === null),
    );
    outcome.limits.forEach(({ margin_K }, r) => {
      if (margin_K !== null) expect(limits.rows[r]?.[6]).toBeCloseTo(margin_K, 4);
    });
  });

  test('say every number once as text and once as a number that rounds to it', () => {
    for (const made of reportTables(report)) {
      made.amounts.forEach((row, r) => {
        row.forEach((amounts, c) => {
          const [amount] = amounts;
          const text = made.rows[r]?.[c] ?? '';
          const shown = Number(/^[−\d.\u202f]+/.exec(text)?.[0].replace('−', '-').replaceAll('\u202f', ''));
          if (amounts.length !== 1 || !amount || amount.unit === 's' || !Number.isFinite(shown)) return;
          const value =
            amount.unit === 'K' ? Math.abs(amount.value ?? Number.NaN) : (amount.value ?? Number.NaN);
          // Margins are the difference of the temperatures as printed, so they may be off by one in the last place.
          const allowed = Math.max(0.006 * Math.abs(shown), /\.\d/.test(text) ? 0.1 : 1);
          expect([made.id, text, Math.abs(Math.abs(shown) - Math.abs(value)) <= allowed]).toEqual([
            made.id,
            text,
            true,
          ]);
        });
      });
    }
  });

  test('have as many cells in every row as heads, and no unit or thin space in a number', () => {
    for (const made of reportTables(report)) {
      const { heads, rows } = tableData(made);
      expect(new Set(heads).size).toBe(heads.length);
      for (const row of rows) {
        expect(row).toHaveLength(heads.length);
        for (const cell of row) expect(String(cell)).not.toContain('\u202f');
      }
    }
  });

  test('part a pair of numbers and a range into columns of their own', () => {
    expect(tableData(intersectionsTable(report)).heads).toEqual([
      'Flow, m³/h',
      'Pressure, Pa',
      'Stable',
      'Used',
    ]);
    expect(tableData(ratingsTable(report)).heads).toEqual([
      'Way',
      'Watts in all, W',
      'Least watts of one, W',
      'Most watts of one, W',
      'Bounded by',
      'The present load',
    ]);
  });

  test('give times in seconds and speeds of fans in percent', () => {
    expect(tableData(reachedTable(report)).heads).toEqual(['Limit', 'Reached after, s']);
    expect(tableData(fanStopTable(report)).heads).toEqual([
      'After, s',
      'Film, °C',
      'Bond, °C',
      'Sink, °C',
      'Outside, °C',
      'Air, °C',
    ]);
    expect(tableData(fansTable(report)).heads.slice(1, 3)).toEqual(['How many', 'Speed, %']);
    expect(tableData(figuresTable(report)).heads).toEqual(['Figure', 'Value', 'Value, unit']);
  });
});

test('without an answer a rating that there is not leaves its cells empty', () => {
  const { rows } = tableData(ratingsTable(sampleWithoutAnswer().report));
  expect(rows[0]?.slice(1, 4)).toEqual([null, null, null]);
  expect(rows[1]?.[1]).toBeGreaterThan(0);
});
