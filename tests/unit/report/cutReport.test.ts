import { describe, expect, test } from 'vitest';
import type { Design } from '../../../src/model/design.ts';
import { exampleById } from '../../../src/model/examples/examples.ts';
import { setAt } from '../../../src/model/path.ts';
import { cutReport } from '../../../src/report/cutReport.ts';
import { reportText } from '../../../src/report/reportText.ts';
import {
  cutOutsTable,
  cutTable,
  cutTables,
  millsTable,
  sheetsTable,
  slopesTable,
} from '../../../src/report/tables.ts';
import type { UnitSystem } from '../../../src/report/types.ts';
import { sampleOf, sampleWithoutAnswer } from '../../helpers/sampleReport.ts';

const eight = exampleById('eightResistors');
const changed = (...changes: [string, unknown][]): Design =>
  changes.reduce((design, [path, value]) => setAt(design, path, value), eight);
const reportOf = (design: Design, system: UnitSystem = 'metric') => cutReport(design, undefined, system);
const blanks = (text: string) => text.replaceAll(/\s/g, ' ');
const joined = (lines: readonly string[]) => blanks(lines.join('\n'));

describe('what has to be cut, in words', () => {
  test('says how many panels of how many kinds, and how much sheet at least', () => {
    expect(blanks(reportOf(eight).sentence)).toBe(
      '16 panels of 11 kinds make one box: at least 755 cm² of 3 mm ABS, waste not counted.',
    );
    expect(blanks(reportOf(changed(['cutting.boxes', 12])).sentence)).toMatch(
      /make one box, 192 for 12 boxes: at/,
    );
  });

  test('marks every kind with a letter that is no figure, and rows of all tables with the same', () => {
    const { panels, cutOuts, slopes, mills } = reportOf(eight);
    expect(panels.map(({ mark }) => mark).join('')).toBe('ABCDEFGHJKL');
    const named = new Map(panels.map(({ mark, name }) => [mark, name]));
    for (const { mark, panel } of [...cutOuts, ...slopes, ...mills]) expect(named.get(mark)).toBe(panel);
  });

  test('says the joint that all sizes rest on, butted or slotted', () => {
    expect(joined(reportOf(eight).joints)).toMatch(
      /side walls stand on the floor[\s\S]*All joints are butted/,
    );
    const slotted = joined(reportOf(changed(['cutting.joint', 'slotted'])).joints);
    expect(slotted).toContain('Tabs 12 mm long');
    expect(slotted).toContain('larger by 0.1 mm on each side');
    expect(slotted).not.toContain('All joints are butted');
  });

  test('says that the side clearance is a gap between two parts, and what errors of both make of it', () => {
    const words = joined(reportOf(eight).fits);
    expect(words).toContain('side clearance of 0.8 mm is a gap, not a cut');
    expect(words).toContain('26.6 mm wide inside, has over the sink’s 25 mm');
    expect(words).toContain('anything from 0.7 mm to 0.9 mm');
    expect(joined(reportOf(changed(['baffle.fitted', false])).fits)).not.toContain('gap, not a cut');
  });

  test('says which mill the narrowest feature takes, and asks for a smaller one where it must', () => {
    expect(joined(reportOf(eight).fits)).toContain('any mill up to 21 mm cuts it, and so does yours of 3 mm');
    const narrow = reportOf(changed(['baffle.slotWidth_m', 0.0025]));
    expect(blanks(narrow.sentence)).toBe(
      'These panels do not make the box yet. The mill of 3 mm is too wide for the slot under the fins in the baffle: take one of at most 2.5 mm.',
    );
    expect(narrow.mills[0]).toMatchObject({ mark: 'J', widest: '2.5', own: 'too wide' });
  });

  test('asks for dog-bones only where square tabs enter milled slots', () => {
    expect(joined(reportOf(eight).fits)).not.toContain('dog-bone');
    expect(joined(reportOf(changed(['cutting.joint', 'slotted'])).fits)).toContain('dog-bone');
  });

  test('tells that the angle of the answer is not the one that is built, and is quiet where it is', () => {
    expect(joined(reportOf(eight).remarks)).toContain(
      'is 40.3° between top and bottom and 22.6° between its sides; the answer counts 51.6°',
    );
    expect(joined(reportOf(changed(['plenum.neckAngle_rad', 0.6])).remarks)).not.toContain(
      'the answer counts',
    );
  });

  test('tells that the play round the baffle is more leak than the answer counts', () => {
    expect(joined(reportOf(eight).joints)).not.toContain('wider than the leak');
    expect(joined(reportOf(changed(['cutting.fit_m', 0.0002])).joints)).toContain('seal the seat');
  });

  test('tells a bevel that no saw tilts to', () => {
    expect(joined(reportOf(eight).remarks)).not.toContain('saw tilts');
    expect(joined(reportOf(changed(['fan.sideBySide', 3])).remarks)).toContain(
      'A bevel of 65.6° is more than a saw tilts',
    );
  });

  test('says how large the box is outside, and what hangs below its floor', () => {
    const remarks = joined(reportOf(eight).remarks);
    // 3 + 30 + 3 + 150 + 3 long; as wide as the fan plate, 63.39 high and centred 17.5 over the plenum floor; top at 79.
    expect(remarks).toContain('189 mm long, 63.12 mm wide and 93.2 mm high');
    expect(remarks).toContain('reaches 11.2 mm below the underside of the floor');
  });

  test('marks the usual screw pitch as practice, and leaves an entered one without remark', () => {
    expect(joined(reportOf(eight).remarks)).toContain('common practice, no source');
    expect(joined(reportOf(changed(['cutting.fanPitch_m', 0.05])).remarks)).not.toContain('no source');
  });

  test('names the panel that the stock is too small for', () => {
    const small = reportOf(changed(['cutting.stockLength_m', 0.15], ['cutting.stockWidth_m', 0.15]));
    expect(joined(small.faults)).toContain(
      'The floor, 158 mm by 53 mm in the rough, is larger than the stock sheet of 150 mm by 150 mm.',
    );
    expect(small.sheets[0]?.fits).toBe('not A, B, E, J');
  });

  test.each([
    [['plenum.neckLength_m', 0] as const, /Without a neck-down .* Give the neck-down a length/],
    [['plenum.neckLength_m', 0.002] as const, /too steep to bevel/],
    [['box.width_m', 0.03] as const, /Beside the row 1\.7 mm .* make the box wider by 2\.6 mm/],
    [['baffle.slotWidth_m', 0.03] as const, /reaches under the collar/],
    [['fan.size_m', 0.065] as const, /No usual screw pitch/],
    [['cutting.wireHole_m', 0.05] as const, /End wall: the wire hole does not lie within/],
    [['cutting.fanPitch_m', 0.042] as const, /Fan plate: fan opening and fan screw meet/],
  ])('says of %j what cannot be and what would do', ([path, value], sentence) => {
    const { sentence: said, faults } = reportOf(changed([path, value]));
    expect(blanks(said)).toMatch(/^These panels do not make the box yet\./);
    expect(joined(faults)).toMatch(sentence);
  });

  test('warns of tools and chips always, of hydrogen chloride for PVC, and of cement where the design does', () => {
    expect(reportOf(eight).cautions.map(({ key }) => key)).toEqual(['cutting', 'chips']);
    expect(sampleOf(eight).report.cut.cautions.map(({ key }) => key)).toEqual([
      'cutting',
      'chips',
      'solventCement',
    ]);
    const says = (material: string) =>
      joined(reportOf(changed(['box.material', material])).cautions.map(({ text }) => text));
    expect(says('PVC')).toContain('hydrogen chloride');
    expect(says('ABS')).not.toContain('hydrogen chloride');
  });
});

describe('the tables for the workshop', () => {
  const { report } = sampleOf(changed(['cutting.boxes', 12]));

  test('have finished and rough sizes under their unit, counts for one box and for all', () => {
    const { columns, rows } = cutTable(report);
    expect(columns.map(({ head }) => head).slice(3, 9)).toEqual([
      'Length, mm',
      'Width, mm',
      'Rough length, mm',
      'Rough width, mm',
      'Per box',
      'In all',
    ]);
    expect(rows[1]?.slice(0, 2)).toEqual(['B', 'Side wall']);
    expect(rows[1]?.slice(3, 9)).toEqual(['156', '76', '158', '78', '2', '24']);
    expect(rows).toHaveLength(11);
  });

  test('give every cut-out its size and place', () => {
    const rows = cutOutsTable(report).rows.map((row) => row.map(blanks));
    expect(rows).toContainEqual(['J', 'Baffle', 'slot under the fins', '134.16 × 21', '74.9', '22.4']);
    expect(rows).toContainEqual(['F', 'Fan plate', 'fan opening', '⌀ 57', '31.56', '31.7']);
    expect(rows.filter(([, , name]) => name === 'fan screw')).toHaveLength(4);
  });

  test('give of a sloping panel both edges, their distance, bevels and four corners', () => {
    const [, side] = slopesTable(report).rows;
    expect(side).toEqual([
      'H',
      'Neck-down, side',
      '57',
      '35',
      '30.59',
      '11.3°',
      '3.87°',
      '0, 0; 0, 57',
      '30.59, 11; 30.59, 46',
    ]);
  });

  test('count the sheet for all boxes, and say what the mill leaves', () => {
    expect(sheetsTable(report).rows.map((row) => row.map(blanks))).toEqual([
      ['3 mm ABS', '192', '9070 cm²', '4', 'B, Side wall', 'every panel'],
    ]);
    expect(blanks(millsTable(report).rows[0]?.at(-1) ?? '')).toBe('fits, inner corners of radius 1.5 mm');
  });

  test('are in inches to a thousandth where the report is', () => {
    const { columns, rows } = cutTable(sampleOf(eight, 'inch').report);
    expect(columns[3]?.head).toBe('Length, in');
    expect(rows[0]?.slice(3, 5)).toEqual(['6.142', '2.008']);
  });

  test('stand in the text for the terminal, with the joint and the cautions, answer or not', () => {
    for (const { report: each } of [sampleOf(eight), sampleWithoutAnswer()]) {
      const text = reportText(each);
      for (const { caption } of cutTables(each)) expect(text).toContain(caption);
      expect(text).toContain('- Saw, shear and mill.');
      expect(blanks(text).replaceAll(/ +/g, ' ')).toContain(
        'cover the edges of the end wall and the front wall',
      );
    }
  });
});
