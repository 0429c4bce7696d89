import { render, screen, within } from '@testing-library/react';
import { describe, expect, test } from 'vitest';
import { Questions } from '../../src/ui/questions/Questions.tsx';
import { WhatIfTheFanStops } from '../../src/ui/questions/WhatIfTheFanStops.tsx';
import { WillItHold } from '../../src/ui/questions/WillItHold.tsx';
import { WillItHoldMore } from '../../src/ui/questions/WillItHoldMore.tsx';
import { exampleIds, sampleExample, sampleWithoutAnswer } from '../helpers/sampleReport.ts';

describe.each(exampleIds)('the questions about %s', (id) => {
  const { report } = sampleExample(id);

  test('stand in order, each a region under its own heading, its sentence first', () => {
    render(
      <>
        <WillItHold report={report} onPlace={() => {}} />
        <Questions report={report} />
      </>,
    );
    const headings = screen.getAllByRole('heading', { level: 2 }).map((heading) => heading.textContent);
    expect(headings).toEqual([
      'Will it hold?',
      'Where does the air go?',
      'Where do the kelvins go?',
      'What if the fan stops?',
      'How is it computed?',
    ]);
    for (const heading of headings) {
      const region = screen.getByRole('region', { name: heading ?? '' });
      expect(region.children[1]?.tagName).toBe('P');
    }
  });

  test('show the verdict, every limit in order, every note and the rating', () => {
    const { container } = render(
      <>
        <WillItHold report={report} onPlace={() => {}} />
        <WillItHoldMore report={report} />
      </>,
    );
    const text = container.textContent ?? '';
    expect(text).toContain(report.verdict.sentence);
    const list = screen.getByRole('list', { name: /most urgent first/ });
    const labels = within(list)
      .getAllByRole('listitem')
      .map((item) => item.textContent ?? '');
    report.limits.forEach((limit, i) => {
      expect(labels[i]).toContain(limit.label);
      expect(labels[i]).toContain(limit.value);
      expect(labels[i]).toContain(limit.stateWord);
    });
    for (const said of [...report.notes.map((note) => note.text), report.ratings?.sentence ?? ''])
      expect(text).toContain(said);
  });

  test('give every chart a table twin with all its rows', () => {
    const { container } = render(<Questions report={report} />);
    const twins = [...container.querySelectorAll('details table')];
    const rows = (caption: string) =>
      twins
        .find((twin) => twin.closest('section')?.getAttribute('aria-label') === caption)
        ?.querySelectorAll('tbody tr').length;
    expect(rows('Every resistor')).toBe(report.heat?.positions.length);
    expect(rows('From the room to the hottest film')).toBe(report.heat?.ladder.rungs.length);
    expect(rows('Where the fan’s air goes')).toBe(report.air?.shares.length);
    expect(rows('What takes the fan’s pressure')).toBe(report.air?.stages.length);
    expect(rows('Fan curve and the box’s own curve')).toBe(report.air?.chart?.fan.length);
  });

  test('both ratings stand side by side, and the limits in the order they are reached', () => {
    const { container } = render(<WhatIfTheFanStops report={report} />);
    const terms = [...container.querySelectorAll('dl dt')].map((term) => term.textContent);
    expect(terms).toEqual(['with fan', 'without fan']);
    const totals = [...container.querySelectorAll('dl b')].map((total) => total.textContent);
    expect(totals).toEqual(report.fanStop.ratings.map(({ total }) => total));
    const table = screen.getByRole('region', { name: /Limits after the fan stops/ });
    const times = within(table)
      .getAllByRole('row')
      .slice(1)
      .map((row) => row.textContent);
    expect(times).toEqual(report.fanStop.reached.map(({ label, time }) => label + time));
  });

  test('list every method with equation, source, range and scatter, and every source and caution', () => {
    const { container } = render(<Questions report={report} />);
    const text = container.textContent ?? '';
    for (const method of report.methods)
      for (const part of [method.title, method.equation, method.source, method.range, method.scatter])
        expect(text).toContain(part);
    for (const source of report.sources) expect(text).toContain(source.cite);
    for (const assumption of report.assumptions) expect(text).toContain(assumption.says);
    for (const caution of report.cautions) expect(text).toContain(caution.text);
  });
});

test('without an answer every question still says why', () => {
  const { report } = sampleWithoutAnswer();
  const { container } = render(
    <>
      <WillItHold report={report} onPlace={() => {}} />
      <Questions report={report} />
    </>,
  );
  const sections = [...container.querySelectorAll('section[id]')];
  expect(sections).toHaveLength(5);
  for (const section of sections) {
    const says =
      section.id === 'what-if-the-fan-stops'
        ? report.fanStop.sentence
        : section.id === 'how-is-it-computed'
          ? ''
          : report.verdict.sentence;
    expect(section.textContent).toContain(says);
  }
  expect(container.textContent).toContain(report.verdict.reasons[0] ?? 'none');
});
