import { describe, expect, test } from 'vitest';
import { reportJson } from '../../../src/report/reportJson.ts';
import { reportText, textTable } from '../../../src/report/reportText.ts';
import { exampleIds, sampleExample, sampleWithoutAnswer } from '../../helpers/sampleReport.ts';

describe('the report on a terminal', () => {
  test.each(exampleIds)('says everything that the report of %s says', (id) => {
    const { report } = sampleExample(id);
    const flat = reportText(report).replaceAll(/\s+/g, ' ');
    const squeeze = (text: string) => text.replaceAll(/\s+/g, ' ');
    const said = [
      report.title.title,
      report.verdict.sentence,
      ...report.verdict.reasons,
      report.ratings?.sentence ?? '',
      report.air?.sentence ?? '',
      report.heat?.sentence ?? '',
      ...report.notes.map((note) => note.text),
      ...report.cautions.map((caution) => caution.text),
      ...report.sources.map((source) => source.cite),
      ...report.limits.map((limit) => limit.label),
      ...report.inputs.flatMap((group) => group.rows.map((row) => row.value)),
    ];
    for (const text of said) expect(flat).toContain(squeeze(text));
  });

  test('carries no control characters but line ends, and no trailing blanks', () => {
    const text = reportText(sampleExample('onePair').report);
    expect([...text].filter((char) => char < ' ' && char !== '\n')).toEqual([]);
    expect(text).not.toMatch(/[ \t]\n/);
  });

  test('lines up columns, numbers to the right', () => {
    const table = textTable({
      id: 't',
      caption: 'T',
      columns: [
        { head: 'A', align: 'start' },
        { head: 'B', align: 'end' },
      ],
      rows: [
        ['x', '1'],
        ['yy', '200'],
      ],
    });
    expect(table).toBe(['T', 'A     B', '--  ---', 'x     1', 'yy  200'].join('\n'));
  });

  test('of a design without an answer gives the reason and no empty tables', () => {
    const text = reportText(sampleWithoutAnswer().report);
    expect(text).toContain('No answer');
    expect(text).not.toContain('Limits, most urgent first');
  });
});

test('the report for programs is JSON with the words and the numbers, without the drawing', () => {
  const { report, outcome } = sampleExample('onePair');
  const read = JSON.parse(reportJson(report, outcome));
  expect(read.report.verdict.word).toBe(report.verdict.word);
  expect(read.outcome.ok).toBe(true);
  expect(read.report.drawing).toBeUndefined();
});
