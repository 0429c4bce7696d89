import { describe, expect, test } from 'vitest';
import type { CheckGroup } from '../../../../src/report/evidence/checkRecord.ts';
import { evidenceReport, printedEvidence } from '../../../../src/report/evidence/evidenceReport.ts';
import { openEvidence } from '../../../../src/report/evidence/openEvidence.ts';
import { tableData } from '../../../../src/report/tableData.ts';
import { sampleCheck, sampleGroup } from '../../../helpers/sampleChecks.ts';

const groups: CheckGroup[] = [
  sampleGroup({
    subject: 'zeta',
    methods: [],
    checks: [sampleCheck({ printed: '0', computed: 0.1, deviation: 0.1 })],
  }),
  sampleGroup(),
  sampleGroup({
    kind: 'worked again',
    source: 'elenbaas1942',
    methods: ['elenbaas'],
    subject: 'freeConvection',
    checks: [sampleCheck({ quantity: 'Number', deviation: 0.25, computed: 12.5 })],
  }),
  sampleGroup({ subject: 'shelf', source: 'crcGlasses', kind: 'measured', methods: [] }),
];
const plain = (text: string) => text.replaceAll('\u202f', ' ');

describe('what the evidence says', () => {
  const report = evidenceReport(groups);

  test('counts by kind what checks methods, and says that none is measured', () => {
    expect(report.sentence).toBe(
      'The tests hold 3 numbers that the methods give against published ones of 2 sources: none measured on a bench, 2 of worked examples in textbooks and 1 of the same equation worked again.',
    );
  });

  test('says how close, which is farthest off, and what else is held', () => {
    expect(report.remarks.slice(0, 2).map(plain)).toEqual([
      '33 % agree within 1 %, 33 % within 5 %, and each within what its method is allowed. Farthest off, by 25 %, is the number of “a plate: at 60 °C”: 12.5 for 10.0.',
      'Another 1 hold the materials and sizes of the shelf and the factors of units against tables.',
    ]);
  });

  test('says what has not been measured or checked from outside', () => {
    expect(report.remarks[2]).toMatch(/^No box of this kind has been measured/);
    expect(report.remarks[3]).toContain('1 beside the same equation worked again');
    const unchecked = report.tables.find(({ id }) => id === 'evidenceUnchecked');
    const rows = unchecked?.rows.map(([title, beside]) => [title, beside]) ?? [];
    expect(rows).toContainEqual(['Elenbaas number', 'the same equation worked again']);
    expect(rows.map(([title]) => title)).not.toContain('Radiation to the room');
  });

  test('has a section a subject, in the order of an answer, one without words of its own last', () => {
    expect(report.sections.map(({ id }) => id)).toEqual(['freeConvection', 'radiation', 'shelf', 'zeta']);
    expect(report.sections.map(({ heading }) => plain(heading))).toEqual([
      'Free convection: 1 check, 0 % within 1 %',
      'Radiation: 1 check, all within 1 %',
      'The shelf: 1 check, all within 1 %',
      'Zeta: 1 check, 0 % within 1 %',
    ]);
  });

  test('has numbers behind the words of a row', () => {
    const [, radiation] = report.sections;
    if (!radiation) throw new Error('it has checks');
    const { heads, rows } = tableData(radiation.table);
    expect(Object.fromEntries(heads.map((head, i) => [head, rows[0]?.[i]]))).toMatchObject({
      Quantity: 'coefficient',
      Case: 'a plate: at 60 °C',
      'Published, W/(m²·K)': 10,
      'Computed, W/(m²·K)': 10.04,
      'Deviation, %': 0.4,
      Kind: 'Worked example',
    });
  });

  test('prints totals and every subject', () => {
    const tables = printedEvidence(groups);
    expect(tables.map(({ id }) => id)).toEqual([
      'evidenceSays',
      'evidenceKinds',
      'evidenceSubjects',
      'evidenceUnchecked',
      'evidenceFreeConvection',
      'evidenceRadiation',
      'evidenceShelf',
      'evidenceZeta',
      'evidenceSources',
    ]);
    expect(tables.find(({ id }) => id === 'evidenceRadiation')?.rows[0]?.map(plain)).toEqual([
      'Coefficient: a plate: at 60 °C',
      '10.0 W/(m²·K)',
      '10.04 W/(m²·K)',
      '0.4 % high',
      '±0.5 %',
      '[1]',
    ]);
    expect(tables.at(-1)?.rows[0]).toEqual([
      '[1]',
      expect.stringMatching(/^Worked example\. Lienhard.*2\.8$/),
    ]);
  });
});

describe('a choice', () => {
  test('shows what is of its kind and subject; the sentence stands', () => {
    const report = evidenceReport(groups, { kind: 'worked example', subject: 'radiation' });
    expect(plain(report.shown)).toBe('1 check, all within 1 %, of 1 source.');
    expect(report.sections.map(({ id }) => id)).toEqual(['radiation']);
    expect(report.sentence).toBe(evidenceReport(groups).sentence);
  });

  test('of nothing says so, and has no chart', () => {
    const report = evidenceReport(groups, { kind: 'handbook', subject: 'radiation' });
    expect(report.shown).toBe('No check is of this kind and subject.');
    expect([report.charts, report.sections]).toEqual([[], []]);
  });
});

describe('the charts', () => {
  test('leave out what has no place, and say so', () => {
    const [match, deviation] = evidenceReport(groups).charts;
    expect(match?.caption).toContain('1 of nil');
    expect(deviation?.caption).toContain('1 are farther off than 20');
    expect(match?.series.map(({ kind, points }) => [kind, points.length])).toEqual([
      ['measured', 1],
      ['worked example', 1],
      ['worked again', 1],
    ]);
    expect(deviation?.yTicks).toEqual([-1, -0.5, 0, 0.5, 1]);
    const [point] = match?.series[1]?.points ?? [];
    expect(point).toMatchObject({ x: 1, y: Math.log10(10.04), name: 'coefficient: a plate: at 60 °C' });
  });

  test('reach over all their points, on few whole powers', () => {
    const wide = [1e-7, 1, 1e10].map((value) =>
      sampleCheck({ printed: value.toExponential(), computed: value, deviation: 0 }),
    );
    const [match] = evidenceReport([sampleGroup({ checks: wide })]).charts;
    const ticks = match?.xTicks ?? [];
    expect(ticks[0]).toBeLessThanOrEqual(-7);
    expect(ticks.at(-1)).toBeGreaterThanOrEqual(10);
    expect(ticks.length).toBeLessThanOrEqual(9);
  });
});

test('the evidence kept with the program is opened ready for print', async () => {
  const { tables, reportOf } = await openEvidence();
  expect(tables.length).toBeGreaterThan(15);
  expect(reportOf({ kind: 'all', subject: 'air' }).sections).toHaveLength(1);
});
