import { describe, expect, test } from 'vitest';
import { table } from '../../../src/report/makeTable.ts';
import { reportJson } from '../../../src/report/reportJson.ts';
import { reportText, textTable } from '../../../src/report/reportText.ts';
import { exampleIds, sampleExample, sampleOf, sampleWithoutAnswer } from '../../helpers/sampleReport.ts';

describe('the report on a terminal', () => {
  test.each(exampleIds)('says everything that the report of %s says', (id) => {
    const { report } = sampleExample(id);
    const flat = reportText(report).replaceAll(/\s+/g, ' ');
    const squeeze = (text: string) => text.replaceAll(/\s+/g, ' ');
    const said = [
      report.title.title,
      `Checksum ${report.title.checksum}`,
      report.verdict.sentence,
      ...report.verdict.reasons,
      report.ratings?.sentence ?? '',
      report.air?.sentence ?? '',
      report.heat?.sentence ?? '',
      report.air?.sound ?? '',
      report.drift?.sentence ?? '',
      report.derating?.sentence ?? '',
      report.fanStop.sentence,
      report.fanStop.label,
      ...report.fanStop.ratings.flatMap(({ label, total, boundBy }) => [label, total, boundBy]),
      ...report.fanStop.reached.flatMap(({ label, time }) => [label, time]),
      ...report.notes.map((note) => note.text),
      ...report.cautions.map((caution) => caution.text),
      ...report.sources.map((source) => source.cite),
      ...report.limits.map((limit) => limit.label),
      ...report.inputs.flatMap((group) => group.rows.map((row) => row.value)),
    ];
    for (const text of said) expect(flat).toContain(squeeze(text));
  });

  test('says the load in pulses, and what is noted of the box without fans', () => {
    const { design } = sampleExample('onePair');
    const { report } = sampleOf({
      ...design,
      load: { ...design.load, duty: 0.25, period_s: 8 },
      box: { ...design.box, tilt_rad: Math.PI / 2 },
    });
    const flat = reportText(report).replaceAll(/\s+/g, ' ');
    expect(report.pulse?.sentence).toBeDefined();
    expect(report.fanStop.notes.length).toBeGreaterThan(0);
    for (const text of [report.pulse?.sentence ?? '', ...report.fanStop.notes.map((note) => note.text)])
      expect(flat).toContain(text.replaceAll(/\s+/g, ' '));
  });

  test.each([
    ['an example', sampleExample('onePair')],
    ['a design without an answer', sampleWithoutAnswer()],
  ])('of %s carries no control characters but line ends, and no trailing blanks', (_, { report }) => {
    const text = reportText(report);
    expect([...text].filter((char) => char < ' ' && char !== '\n')).toEqual([]);
    expect(text).not.toMatch(/[ \t]\n/);
  });

  test('lines up columns, numbers to the right', () => {
    const made = textTable(
      table(
        't',
        'T',
        ['A', '>B'],
        [
          ['x', '1'],
          ['yy', '200'],
        ],
      ),
    );
    expect(made).toBe(['T', 'A     B', '--  ---', 'x     1', 'yy  200'].join('\n'));
  });

  test('of a design without an answer gives the reason and no empty tables', () => {
    const text = reportText(sampleWithoutAnswer().report);
    expect(text).toContain('No answer');
    expect(text).not.toContain('Limits, most urgent first');
    expect(text).not.toContain('Hottest of each after the fan stops');
    expect(text).toContain('Ratings with and without fan');
  });
});

test('the report for programs is JSON with the words and the numbers, without the drawing', () => {
  const { report, outcome } = sampleExample('onePair');
  const read = JSON.parse(reportJson(report, outcome));
  expect(read.report.verdict.word).toBe(report.verdict.word);
  expect(read.outcome.ok).toBe(true);
  expect(read.report.drawing).toBeUndefined();
  expect(read.report.fanStop.act).toBe(report.fanStop.act);
  expect(read.report.derating.overAmbient.lines).toEqual(report.derating?.overAmbient.lines);
});
