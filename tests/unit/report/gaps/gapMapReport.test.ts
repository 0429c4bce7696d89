import { describe, expect, test } from 'vitest';
import { exampleById } from '../../../../src/model/examples/examples.ts';
import { gapMapReport } from '../../../../src/report/gaps/gapMapReport.ts';
import { tableData } from '../../../../src/report/tableData.ts';
import { eightAt, eightWithoutBaffle, sampleGapMap } from '../../../helpers/sampleGaps.ts';

const plain = (text: string) => text.replaceAll('\u202f', ' ');

function reportOf(...asked: Parameters<typeof sampleGapMap>) {
  const { question, map } = sampleGapMap(...asked);
  return gapMapReport(question, map, 'metric');
}

const report = reportOf([0, 4, 8, 12], [3, 9, 15]);

describe('the sentence of a map', () => {
  test('says where the box holds, which pair is coolest, which gap weighs more, and what the baffle is worth', () => {
    expect(plain(report.sentence)).toMatch(
      /^The box holds with little to spare over part of this map\. By slot: with 3 mm no value and with 21 mm \(now\) up to 9\.7 mm of side clearance\. The coolest pair is 0\.8 mm of side clearance with 21 mm of slot: the film at 93\.3 °C\. Of the two, the slot weighs more: over its range it moves the film by 10\.9 K, the side clearance by 10\.6 K\. Leaving the baffle out costs 14 K, and the box no longer holds\.$/,
    );
  });

  test('is short where the verdict is the same all over', () => {
    expect(reportOf([0, 2], [10, 20]).sentence).toMatch(
      /^Any pair on this map does: the box holds with little to spare\./,
    );
    expect(reportOf([0, 2], [10, 20], eightAt(5)).sentence).toMatch(
      /^No pair on this map makes the box hold\./,
    );
  });

  test('says so where there is no answer at all', () => {
    const design = exampleById('eightResistors');
    const dead = reportOf([0, 2], [10, 20], { ...design, fan: { ...design.fan, supply_V: 3 } });
    expect(dead.sentence).toBe('No pair of these gaps comes to an answer.');
    expect(dead.pictures).toEqual([]);
    expect(dead.rows[0]?.cells[0]).toMatchObject({ state: null, stateWord: 'no answer' });
  });

  test('needs no baffle to compare with', () => {
    expect(plain(reportOf([0, 2], [10, 20], eightWithoutBaffle()).sentence)).toContain(
      'Now, without a baffle, the film is 14 K hotter',
    );
  });
});

describe('the table of a map', () => {
  test('has a column a value of the first gap and a row a value of the second, the present pair marked', () => {
    expect(report.heads.map(plain)).toEqual(['0 mm', '0.8 mm', '4 mm', '8 mm', '12 mm']);
    expect(report.rows.map(({ head }) => plain(head))).toEqual(['3 mm', '9 mm', '15 mm', '21 mm']);
    const cells = report.rows.flatMap((row) => row.cells);
    expect(cells.filter(({ isPresent }) => isPresent).map(({ label }) => plain(label))).toEqual([
      '0.8 mm and 21 mm',
    ]);
  });

  test('says film and verdict of every pair, and what puts it into the design', () => {
    const cell = report.rows[1]?.cells[2];
    expect(plain(cell?.film.text ?? '')).toBe('100.3 °C');
    expect(cell?.stateWord).toBe('little to spare');
    expect(cell?.values).toEqual({
      'baffle.fitted': true,
      'baffle.sideClearance_m': 0.004,
      'baffle.slotWidth_m': 0.009,
    });
    expect(report.rows[0]?.cells[4]).toMatchObject({ state: null, stateWord: 'cannot be built' });
    expect(report.remarks.map(plain)).toEqual([
      'Beside the sinks the box leaves 10 mm on each side at most.',
    ]);
  });

  test('comes as numbers for a file', () => {
    const [film, verdict] = report.tables;
    if (!film || !verdict) throw new Error('no tables');
    expect(tableData(film).rows[1]?.slice(0, 4)).toEqual([
      9,
      expect.any(Number),
      expect.any(Number),
      expect.closeTo(100.35, 2),
    ]);
    expect(verdict.rows[0]?.[1]).toBe('does not hold');
  });
});

describe('the picture of a map', () => {
  const [film, load] = report.pictures;

  test('comes tinted by the film’s margin and by the load', () => {
    expect(report.pictures.map(({ shade, shadeUnit }) => [shade, shadeUnit])).toEqual([
      ['filmMargin_K', 'K'],
      ['loadFactor', '×'],
    ]);
  });

  test('is deepest where least is left, with a named line at every level', () => {
    expect(film?.bands[0]?.depth).toBe(1);
    expect(film?.bands.at(-1)?.depth).toBe(0);
    expect(film?.isolines.map(({ label }) => label)).toContain('50');
    expect(load?.isolines.map(({ label }) => label)).toContain('1');
  });

  test('has the line where the verdict changes in the display unit, and the area beyond it', () => {
    const line = film?.failLines[0] ?? [];
    expect(Math.max(...line.map(({ x }) => x))).toBeGreaterThan(5);
    expect(film?.failArea.length).toBeGreaterThan(50);
    // The line of load factor one is the same line, for nothing but the load decides here.
    const one = load?.isolines.find(({ label }) => label === '1')?.lines[0] ?? [];
    expect(one.length).toBe(line.length);
  });

  test('marks the present design and explains itself', () => {
    expect(film?.present).toEqual({ x: expect.closeTo(0.8, 9), y: expect.closeTo(21, 9) });
    expect(film?.key).toEqual([
      'Hatched, beyond the heavy line, the box does not hold.',
      'Elsewhere it holds with little to spare.',
      'What is left blank cannot be built, or has no answer.',
    ]);
    expect(reportOf([0, 2], [10, 20]).pictures[0]?.key).toEqual([
      'Everywhere on this map the box holds with little to spare.',
    ]);
  });

  test('is none for a single line of values', () => {
    expect(reportOf([0.8], [10, 20]).pictures).toEqual([]);
  });
});
