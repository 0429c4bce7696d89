import { render } from '@testing-library/react';
import { describe, expect, test } from 'vitest';
import { drawSheet } from '../../src/ui/sheet/drawSheet.ts';
import { areaOf, meet, within } from '../../src/ui/sheet/placeText.ts';
import { plotFan } from '../../src/ui/sheet/plotFan.ts';
import { plotLadder } from '../../src/ui/sheet/plotLadder.ts';
import { plotLines } from '../../src/ui/sheet/plotLines.ts';
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

  test('carries verdict, both ratings, time to act, every limit, note, caution, input, assumption and source of a limit', () => {
    const text = sheetOf(report).textContent ?? '';
    const said = [
      report.title.title,
      report.title.revision,
      report.title.date,
      report.title.invented,
      report.verdict.word,
      report.verdict.sentence,
      report.fanStop.basis,
      report.title.checksum,
      report.title.remark,
      ...report.limits.flatMap((limit) => [limit.label, limit.value, limit.stateWord]),
      ...report.notes.slice(0, 3).map((note) => note.text),
      ...report.cautions.map((caution) => caution.text),
      ...report.inputs.flatMap((group) =>
        group.rows.filter(({ elsewhere }) => !elsewhere).map((row) => row.value),
      ),
      ...report.assumptions.filter(({ ofModel }) => ofModel).map(({ says }) => says),
      ...report.fanStop.figures.flatMap(({ label, value, note }) => [label, value, note]),
      ...report.limits.map(({ source }) => source.split(';')[0] ?? ''),
    ];
    for (const part of said) expect(text).toContain(part);
  });

  test('says nothing of an input that neither its drawing nor its limits show', () => {
    const skipped = report.inputs.flatMap(({ rows }) => rows.filter(({ elsewhere }) => elsewhere));
    expect(skipped.map(({ label }) => label)).toContain('plenum');
    const text = sheetOf(report).textContent ?? '';
    for (const measure of ['plenum', 'bay'])
      expect(text).toContain(skipped.find(({ label }) => label === measure)?.value.split(' ')[0]);
  });

  test('keeps its order: verdict, limits, inputs, sources, signature', () => {
    const text = sheetOf(report).textContent ?? '';
    const at = [
      'to act if it stops',
      'Limits, most urgent first',
      'Inputs that matter',
      'Taken for granted',
      'Checked by, name and date',
    ].map((part) => text.indexOf(part));
    expect(at).toEqual([...at].sort((a, b) => a - b));
    expect(at[0]).toBeGreaterThan(text.indexOf(report.verdict.word));
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

test('the figures for a label stand beside the verdict, in the words of the report', () => {
  const { report } = sampleExample('eightResistors');
  const said = [...sheetOf(report).querySelectorAll('.sheet-ratings > div')].map((figure) =>
    [...figure.children].map(({ textContent }) => textContent),
  );
  expect(said).toEqual(report.fanStop.figures.map(({ label, value, note }) => [label, value, note]));
  expect(said.map(([label]) => label)).toEqual(['rated with fan', 'rated without fan', 'to act if it stops']);
});

test('the title block names revision, date, scale, checksum and page, and leaves a place to sign', () => {
  const { report } = sampleExample('twoDozen');
  const block = [...sheetOf(report).querySelectorAll('.sheet-title > div')].map((cell) => [
    cell.querySelector('dt')?.textContent,
    cell.querySelector('dd')?.textContent,
  ]);
  expect(Object.fromEntries(block)).toMatchObject({
    Title: report.title.title,
    Revision: 'C',
    Date: report.title.date,
    Checksum: report.title.checksum,
    Page: '1 of 1',
    'Checked by, name and date': '',
  });
  expect(report.title.checksum).toMatch(/^[0-9a-f]{10}$/);
});

test('a box that bears a stop of its fan for good says so instead of a time', () => {
  const { design } = sampleExample('onePair');
  const { report } = sampleOf({ ...design, load: { ...design.load, duty: 0.25 } });
  expect(report.fanStop.act).toBeNull();
  expect(sheetOf(report).querySelector('.sheet-ratings')?.textContent).toMatch(/to act if it stopsno hurry/);
});

describe('measures on the drawing', () => {
  const { report } = sampleExample('eightResistors');
  const measuresOf = (art: ReturnType<typeof drawSheet>) =>
    art.texts.filter(({ kind }) => kind === 'measure').map(({ text }) => text);

  test('are all there where there is room', () => {
    expect(measuresOf(drawSheet(report.drawing, 190, 62))).toHaveLength(9);
  });

  test('are left out, not printed over one another, where there is none', () => {
    const { section } = report.drawing;
    const crowded = {
      ...report.drawing,
      section: {
        ...section,
        dimensions: section.dimensions.flatMap((each) => [each, { ...each, text: `${each.text} again` }]),
      },
    };
    const shown = measuresOf(drawSheet(crowded, 190, 62));
    expect(shown.filter((text) => text.includes('again'))).toEqual([]);
    expect(shown).toHaveLength(9);
  });

  test('that the sheet knows no place for are ignored', () => {
    const { plan } = report.drawing;
    const first = plan.dimensions[0];
    if (!first) throw new Error('no dimension');
    const more = {
      ...report.drawing,
      plan: { ...plan, dimensions: [...plan.dimensions, { ...first, id: 'new' }] },
    };
    expect(drawSheet(more, 190, 62)).toEqual(drawSheet(report.drawing, 190, 62));
  });
});

describe('words on plots', () => {
  test('of three points where fan and box meet stand clear of one another, the one in use first', () => {
    const chart = sampleExample('dippingCurve').report.air?.chart;
    if (!chart) throw new Error('no chart');
    for (const height of [26, 34, 42]) {
      const { marks, names, frame } = plotFan(chart, 62, height);
      expect(marks).toHaveLength(3);
      expect(marks[0]).toMatchObject({ used: true });
      expect(marks[0]?.words).not.toBeNull();
      const areas = [...marks.flatMap(({ words }) => words ?? []), ...names].map(areaOf);
      areas.forEach((area, i) => {
        expect(within(area, frame)).toBe(true);
        for (const other of areas.slice(i + 1)) expect(meet(area, other)).toBe(false);
      });
    }
  });

  test('name both lines of the rated load, and mark the design’s own room', () => {
    const chart = sampleExample('eightResistors').report.derating?.overAmbient;
    if (!chart) throw new Error('no chart');
    const plot = plotLines(chart, 62, 36);
    expect(plot.names.map(({ lines }) => lines[0])).toEqual(['with fan', 'without']);
    expect(plot.marks.map(({ words }) => words?.lines[0])).toEqual([chart.marks[0]?.label]);
    expect(plot.lines.map(({ style }) => style)).toEqual(['solid', 'dashed']);
  });

  test('leave a gap in a line where there is no answer', () => {
    const chart = sampleExample('eightResistors').report.derating?.overAmbient;
    if (!chart) throw new Error('no chart');
    const torn = chart.lines.map((line) => ({
      ...line,
      points: line.points.map((point, i) => (i === 2 ? { ...point, y: null } : point)),
    }));
    for (const { d } of plotLines({ ...chart, lines: torn }, 62, 36).lines)
      expect(d.match(/M/g)).toHaveLength(2);
  });
});
