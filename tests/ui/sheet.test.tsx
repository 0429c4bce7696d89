import { render } from '@testing-library/react';
import { describe, expect, test } from 'vitest';
import { drawSheet } from '../../src/ui/sheet/drawSheet.ts';
import { plotFan, plotLadder } from '../../src/ui/sheet/plots.ts';
import { Sheet } from '../../src/ui/sheet/Sheet.tsx';
import { exampleIds, sampleExample, sampleOf, sampleWithoutAnswer } from '../helpers/sampleReport.ts';

function sheetOf(report: Parameters<typeof Sheet>[0]['report']): HTMLElement {
  render(<Sheet report={report} />);
  const sheet = document.querySelector<HTMLElement>('body > .sheet');
  if (!sheet) throw new Error('no sheet in the body');
  return sheet;
}

describe.each(exampleIds)('the sheet of %s', (id) => {
  const { report } = sampleExample(id);

  test('carries verdict, both ratings, time to act, every limit, note, caution, input, assumption and source', () => {
    const text = sheetOf(report).textContent ?? '';
    const said = [
      report.title.title,
      report.title.revision,
      report.title.date,
      report.title.invented,
      report.verdict.word,
      report.verdict.sentence,
      report.ratings?.sentence ?? '',
      ...report.limits.flatMap((limit) => [limit.label, limit.value, limit.stateWord]),
      ...report.notes.slice(0, 3).map((note) => note.text),
      ...report.cautions.map((caution) => caution.text),
      ...report.inputs.flatMap((group) => group.rows.map((row) => row.value)),
      ...report.assumptions.filter(({ ofModel }) => ofModel).map(({ says }) => says),
      ...report.fanStop.figures.flatMap(({ label, value }) => [label, value]),
      ...report.sources.map((source) => source.cite.split(';')[0] ?? ''),
    ];
    for (const part of said) expect(text).toContain(part);
  });

  test('keeps its order: verdict, drawing, limits, inputs, sources, signature', () => {
    const text = sheetOf(report).textContent ?? '';
    const at = [
      'Scale',
      'Limits, most urgent first',
      'Inputs that matter',
      'Taken for granted',
      'Checked, name and date',
    ].map((part) => text.indexOf(part));
    expect(at).toEqual([...at].sort((a, b) => a - b));
    expect(at[0]).toBeGreaterThan(text.indexOf(report.verdict.sentence));
  });

  test('draws within its own paper', () => {
    const art = drawSheet(report.drawing, 190, 62);
    expect(art.height).toBeLessThanOrEqual(62);
    for (const rect of [...art.back, ...art.front]) {
      expect(rect.x).toBeGreaterThanOrEqual(0);
      expect(rect.x + rect.width).toBeLessThanOrEqual(190);
      expect(rect.y).toBeGreaterThanOrEqual(0);
      expect(rect.y + rect.height).toBeLessThanOrEqual(art.height);
    }
  });

  test('states the scale that it draws at', () => {
    const art = drawSheet(report.drawing, 190, 62);
    const [paper = 1, life = 1] = art.scale.split(' : ').map(Number);
    const floor = report.drawing.section.shapes.find((shape) => shape.role === 'plenum');
    const drawn = art.back.find((rect) => rect.kind === 'plenum');
    expect(drawn?.width).toBeCloseTo(((floor?.box.width_m ?? 0) * 1000 * paper) / life, 2);
  });

  test('plots the point where fan and box meet on both curves’ paper', () => {
    const chart = report.air?.chart;
    if (!chart) throw new Error('no chart');
    const plot = plotFan(chart, 60, 38);
    const mark = plot.marks.find((point) => point.used);
    expect(mark?.x).toBeGreaterThan(plot.frame.x);
    expect(mark?.x).toBeLessThan(plot.frame.x + plot.frame.width);
    expect(mark?.y).toBeGreaterThan(plot.frame.y);
    expect(mark?.y).toBeLessThan(plot.frame.y + plot.frame.height);
    expect(`${plot.fan}${plot.box}`).not.toMatch(/NaN|Infinity/);
  });

  test('lets the bars of the ladder begin where the one before ends', () => {
    const ladder = report.heat?.ladder;
    if (!ladder) throw new Error('no ladder');
    const { bars } = plotLadder(ladder, 60, 38);
    bars.slice(1).forEach((bar, i) => {
      expect(bar.x).toBeCloseTo(bars[i]?.linkX ?? Number.NaN, 2);
    });
  });
});

test('a design without an answer still makes a sheet that says so', () => {
  const { report } = sampleWithoutAnswer();
  const text = sheetOf(report).textContent ?? '';
  expect(text).toContain(report.verdict.sentence);
  expect(text).toContain('Inputs that matter');
  expect(text).toContain('rated without fan');
  expect(text).not.toContain('to act if it stops');
});

test('the figures for a label stand at the end of the sheet’s own, in the words of the report', () => {
  const { report } = sampleExample('eightResistors');
  const figures = [...sheetOf(report).querySelectorAll('.sheet-figures > div')].map(
    (figure) => `${figure.querySelector('dt')?.textContent}: ${figure.querySelector('dd')?.textContent}`,
  );
  const said = [...report.figures, ...report.fanStop.figures].map(({ label, value }) => `${label}: ${value}`);
  expect(figures).toEqual(said);
  expect(figures.slice(-3).map((figure) => figure.split(':')[0])).toEqual([
    'rated with fan',
    'rated without fan',
    'to act if it stops',
  ]);
});

test('a box that bears a stop of its fan for good says so instead of a time', () => {
  const { design } = sampleExample('onePair');
  const { report } = sampleOf({ ...design, load: { ...design.load, duty: 0.25 } });
  expect(report.fanStop.act).toBeNull();
  expect(sheetOf(report).querySelector('.sheet-figures')?.textContent).toMatch(/to act if it stopsno hurry$/);
});
