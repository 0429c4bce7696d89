import { render as renderBare, screen, within } from '@testing-library/react';
import type { ReactElement } from 'react';
import { describe, expect, test } from 'vitest';
import {
  driftTable,
  fanStopTable,
  fansTable,
  limitsTable,
  lineChartTable,
  loadTable,
  ratingsTable,
  reachedTable,
} from '../../src/report/tables.ts';
import type { TextTable } from '../../src/report/types.ts';
import { Questions } from '../../src/ui/questions/Questions.tsx';
import { WhatIfTheFanStops } from '../../src/ui/questions/WhatIfTheFanStops.tsx';
import { WillItHold } from '../../src/ui/questions/WillItHold.tsx';
import { WillItHoldMore } from '../../src/ui/questions/WillItHoldMore.tsx';
import { BenchAround } from '../helpers/BenchAround.tsx';
import { exampleIds, sampleExample, sampleOf, sampleWithoutAnswer } from '../helpers/sampleReport.ts';

const render = (piece: ReactElement) => renderBare(piece, { wrapper: BenchAround });

/** What stands in the twin of a table, heads first. */
function shown(container: HTMLElement, { caption }: TextTable): (string | null)[][] {
  const place = [...container.querySelectorAll('section[aria-label]')].find(
    (section) => section.getAttribute('aria-label') === caption,
  );
  return [...(place?.querySelectorAll('tr') ?? [])].map((row) =>
    [...row.children].map((cell) => cell.textContent),
  );
}

function expectShown(container: HTMLElement, table: TextTable) {
  expect(table.rows.length).toBeGreaterThan(0);
  expect(shown(container, table)).toEqual([table.columns.map(({ head }) => head), ...table.rows]);
}

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
      'What should be changed first?',
      'Where does the air go?',
      'Where do the kelvins go?',
      'Which gap?',
      'What if the fan stops?',
      'What if parts vary?',
      'What size do I need?',
      'Does the bench agree?',
      'Which of these designs?',
      'What has to be cut?',
      'How is it computed?',
      'What is it checked against?',
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

  test('put the watts with and without fan side by side, each with what bounds it and the verdict on the load', () => {
    const { container } = render(<WhatIfTheFanStops report={report} />);
    const pair = [...container.querySelectorAll('dl > div')];
    expect(pair.map((each) => each.querySelector('dt')?.textContent)).toEqual(['with fan', 'without fan']);
    report.fanStop.ratings.forEach(({ total, boundBy, word, state }, i) => {
      expect(pair[i]?.querySelector('b')?.textContent).toBe(total);
      expect(pair[i]?.textContent).toContain(`bounded by: ${boundBy}`);
      expect(pair[i]?.textContent).toContain(`The present load ${word}`);
      expect(pair[i]).toHaveAttribute('data-state', state);
    });
    expect(report.fanStop.label).not.toBe('');
    expect(container.textContent).toContain(report.fanStop.label);
  });

  test('list the limits in the order they are reached after a stop, open to read without a click', () => {
    const { container } = render(<WhatIfTheFanStops report={report} />);
    expectShown(container, reachedTable(report));
    const place = screen.getByRole('region', { name: /Limits after the fan stops/ });
    expect(place.closest('details')).toHaveAttribute('open');
  });

  test('show of a bad day cell by cell what the report says', () => {
    const { container } = render(
      <>
        <WillItHoldMore report={report} />
        <Questions report={report} />
      </>,
    );
    const { derating } = report;
    if (!derating) throw new Error('the example has no answer');
    for (const table of [
      limitsTable(report),
      loadTable(report),
      lineChartTable(derating.overAmbient),
      lineChartTable(derating.overAltitude),
      lineChartTable(derating.overSupply),
      fansTable(report),
      driftTable(report),
      ratingsTable(report),
      fanStopTable(report),
    ])
      expectShown(container, table);
    for (const said of [derating.sentence, report.drift?.sentence ?? '', report.air?.sound ?? '']) {
      expect(said).not.toBe('');
      expect(container.textContent).toContain(said);
    }
  });

  test('list every method with equation, source, range and scatter, and every source and caution', () => {
    const { container } = render(<Questions report={report} />);
    const text = container.textContent ?? '';
    for (const method of report.methods)
      for (const part of [method.title, method.source, method.range, method.scatter])
        expect(text).toContain(part);
    const set = [...container.querySelectorAll('math')].map((each) => each.getAttribute('alttext'));
    for (const { equation } of report.methods)
      expect(set.join('')).toContain(equation.normalize('NFC').replaceAll(/\s/g, ''));
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
  expect(sections).toHaveLength(13);
  for (const section of sections) {
    const own: Record<string, string> = {
      'what-to-change-first': 'Being computed',
      compare: 'nothing to compare with',
      'what-if-the-fan-stops': report.fanStop.sentence,
      // Studies of their own, answered a moment later.
      'what-size': '',
      'what-if-parts-vary': '',
      'does-the-bench-agree': 'Nothing has been read yet',
      'what-has-to-be-cut': report.cut.sentence,
      'which-gap': '',
      'how-is-it-computed': '',
      'what-is-it-checked-against': '',
    };
    expect(section.textContent).toContain(own[section.id] ?? report.verdict.sentence);
  }
  expect(container.textContent).toContain(report.verdict.reasons[0] ?? 'none');
});

test('what comes a moment later is given its place at the end of the first question', () => {
  const { report } = sampleExample('onePair');
  const places: (HTMLElement | null)[] = [];
  const onPlace = (place: HTMLElement | null) => {
    places.push(place);
  };
  const { unmount } = render(<WillItHold report={report} onPlace={onPlace} />);
  const region = screen.getByRole('region', { name: 'Will it hold?' });
  expect(places).toEqual([region.lastElementChild]);
  unmount();
  expect(places.at(-1)).toBeNull();
});

test('a load in pulses is told under the limits, with its chart and the twin of it', () => {
  const { design } = sampleExample('onePair');
  const { report } = sampleOf({ ...design, load: { ...design.load, duty: 0.25, period_s: 8 } });
  if (!report.pulse) throw new Error('a load that goes has pulses');
  const { container } = render(<WillItHoldMore report={report} />);
  expect(container.textContent).toContain(report.pulse.sentence);
  const captions = screen.getAllByRole('figure').map((figure) => figure.firstElementChild?.textContent);
  expect(captions[0]).toBe(report.pulse.chart.caption);
  expectShown(container, lineChartTable(report.pulse.chart));
});

test('notes stand with the question they belong to: those of the box without fans under the stop', () => {
  const { design } = sampleExample('eightResistors');
  const { report } = sampleOf({
    ...design,
    box: { ...design.box, tilt_rad: Math.PI / 2 },
    baffle: { ...design.baffle, sideClearance_m: 0.0002 },
  });
  const notes = ({ container }: { container: HTMLElement }) =>
    [...container.querySelectorAll('li[data-severity]')].map((note) => note.textContent);
  const words = (rows: typeof report.notes) =>
    rows.map(({ severityWord, text }) => `${severityWord}. ${text}`);
  expect(notes(render(<WillItHoldMore report={report} />))).toEqual(words(report.notes));
  const stopped = notes(render(<WhatIfTheFanStops report={report} />));
  expect(stopped).toEqual(words(report.fanStop.notes));
  expect(stopped.join(' ')).toContain('from upright');
});

test('without an answer the stop shows the rating that is left, and no chart, moments or times', () => {
  const { report } = sampleWithoutAnswer();
  const { container } = render(
    <>
      <WillItHoldMore report={report} />
      <WhatIfTheFanStops report={report} />
    </>,
  );
  const totals = [...container.querySelectorAll('dl b')].map((total) => total.textContent);
  expect(totals).toEqual(['–', report.fanStop.ratings[1]?.total]);
  expect(screen.queryByText(/For the label/)).toBeNull();
  expect(screen.queryByRole('figure')).toBeNull();
  expectShown(container, ratingsTable(report));
  expect(container.querySelectorAll('table')).toHaveLength(1);
});
