import { render, screen } from '@testing-library/react';
import { afterEach, describe, expect, test, vi } from 'vitest';
import type { LineChart } from '../../src/report/lineChart.ts';
import { curvesTable } from '../../src/report/tables.ts';
import { marginChart } from '../../src/report/tolerance/histogramChart.ts';
import { ChartFrame } from '../../src/ui/charts/ChartFrame.tsx';
import { histogramRows } from '../../src/ui/charts/histogramRows.ts';
import LinesChart from '../../src/ui/charts/LinesChart.tsx';
import { ladderRows } from '../../src/ui/charts/ladderRows.ts';
import { lineEnds, lineRows, placedLevels } from '../../src/ui/charts/lineRows.ts';
import { positionPoints } from '../../src/ui/charts/positionPoints.ts';
import { curveRows } from '../../src/ui/charts/rows.ts';
import { sampleExample } from '../helpers/sampleReport.ts';

const { report } = sampleExample('eightResistors');
const { air, heat } = report;
if (!air?.chart || !heat) throw new Error('the example has no answer');
const { chart } = air;

describe('rows for the charts', () => {
  test('set a bar over the middle of every bin', () => {
    const histogram = marginChart(
      { edges: [-2, 0, 2], holding: [0, 30], failing: [10, 0] },
      [],
      '',
      'metric',
    );
    expect(histogramRows(histogram)).toEqual([
      { middle: -1, range: '−2 to 0', holding: 0, failing: 25 },
      { middle: 1, range: '0 to 2', holding: 75, failing: 0 },
    ]);
  });

  test('carry every point of both curves, by rising flow', () => {
    const rows = curveRows(chart);
    expect(rows.filter((row) => row.fan !== null)).toHaveLength(chart.fan.length);
    expect(rows.filter((row) => row.box !== null)).toHaveLength(chart.system.length);
    for (const [i, row] of rows.entries())
      if (i > 0) expect(row.flow).toBeGreaterThan(rows[i - 1]?.flow ?? Number.NaN);
  });

  test('turn the ladder into spans that meet end to end', () => {
    const rows = ladderRows(heat.ladder);
    expect(rows).toHaveLength(heat.ladder.rungs.length - 1);
    rows.slice(1).forEach((row, i) => {
      expect(row.span[0]).toBeCloseTo(rows[i]?.span[1] ?? Number.NaN, 9);
    });
  });

  test('number the positions as people do, from one', () => {
    expect(positionPoints(heat).map((point) => point.number)).toEqual([
      '1',
      '2',
      '3',
      '4',
      '5',
      '6',
      '7',
      '8',
    ]);
  });
});

/** Lines from their places along one axis, on paper from 0 to 100. */
function lines(...made: (readonly [key: string, ...points: (readonly [x: number, y: number | null])[]])[]) {
  const styles = ['solid', 'dashed', 'dotted', 'dashDot'] as const;
  const built: LineChart = {
    id: 'made',
    caption: 'Made',
    xLabel: 'time',
    xUnit: 'min',
    yUnit: '°C',
    lines: made.map(([key, ...points], i) => ({
      key,
      label: `${key} line`,
      style: styles[i] ?? 'solid',
      points: points.map(([x, y]) => ({ x, y })),
    })),
    levels: [],
    marks: [],
    xTicks: [0, 5, 10],
    yTicks: [0, 50, 100],
    spoken: 'Made lines.',
  };
  return built;
}

describe('lines over one axis', () => {
  test('become one row a place, with a cell for each line that has a point there', () => {
    const rows = lineRows(lines(['a', [0, 1], [10, 2]], ['b', [5, 3], [10, null]]));
    expect(rows).toEqual([
      { x: 0, a: 1 },
      { x: 5, b: 3 },
      { x: 10, a: 2, b: null },
    ]);
  });

  test('are named at their last point with an answer', () => {
    expect(lineEnds(lines(['a', [0, 80], [5, 60], [10, null]]))).toEqual([
      { key: 'a', label: 'a line', x: 5, y: 60 },
    ]);
    expect(lineEnds(lines(['a', [0, null], [10, null]]))).toEqual([]);
  });

  test('keep their names apart: a name moves up where another stands, and no farther', () => {
    const ends = lineEnds(lines(['high', [10, 42]], ['low', [10, 40]], ['far', [10, 90]]));
    expect(ends.map(({ key }) => key)).toEqual(['low', 'high', 'far']);
    const [low, high, far] = ends.map(({ y }) => y);
    expect(low).toBe(40);
    expect(high).toBeGreaterThan(42);
    expect((high ?? 0) - (low ?? 0)).toBeGreaterThanOrEqual(7 - 1e-9);
    expect(far).toBe(90);
  });

  test('have the name of a level below it where the next one up stands close', () => {
    const level = (label: string, y: number) => ({ label, y, style: 'solid' as const });
    const levels = [level('film', 90), level('plastic', 52), level('outside', 50)];
    const placed = placedLevels({ ...lines(['a', [0, 1]]), levels });
    expect(placed.map(({ label, below }) => [label, below])).toEqual([
      ['film', false],
      ['plastic', false],
      ['outside', true],
    ]);
  });
});

/** jsdom lays nothing out: every box is told to be as large as the chart’s place on the page. */
function giveRoom(width: number, height: number) {
  class Room {
    readonly told: ResizeObserverCallback;
    constructor(told: ResizeObserverCallback) {
      this.told = told;
    }
    observe(target: Element) {
      const entry = { target, contentRect: DOMRect.fromRect({ width, height }) };
      this.told([entry as ResizeObserverEntry], this);
    }
    unobserve() {}
    disconnect() {}
  }
  vi.stubGlobal('ResizeObserver', Room);
  vi.spyOn(HTMLElement.prototype, 'getBoundingClientRect').mockReturnValue(
    DOMRect.fromRect({ width, height }),
  );
}

describe('the chart of lines', () => {
  afterEach(() => {
    vi.unstubAllGlobals();
    vi.restoreAllMocks();
  });

  function draw(drawn: LineChart) {
    giveRoom(600, 300);
    const { container } = render(<LinesChart chart={drawn} />);
    const all = (selector: string) => [...container.querySelectorAll(selector)];
    return { all, texts: all('text').map((text) => text.textContent) };
  }

  test('draws every line in its dashes, with a name, and carries its words for those who do not see it', () => {
    const made = lines(['a', [0, 10], [10, 20]], ['b', [0, 30], [10, 60]], ['c', [0, 80], [10, 90]]);
    const { all, texts } = draw(made);
    expect(all('.recharts-line-curve').map((path) => path.getAttribute('stroke-dasharray'))).toEqual([
      '',
      '8 4',
      '2 3',
    ]);
    expect(texts).toEqual(expect.arrayContaining(['a line', 'b line', 'c line', 'time, min', '°C']));
    expect(all('title').map((title) => title.textContent)).toContain('Made lines.');
  });

  test('leaves a gap where there is no answer', () => {
    const whole = draw(lines(['a', [0, 10], [2, 20], [4, 30], [6, 40]]));
    expect(whole.all('.recharts-line-curve')[0]?.getAttribute('d')?.match(/M/g)).toHaveLength(1);
    const broken = draw(lines(['a', [0, 10], [2, 20], [4, null], [6, 30], [8, 40]]));
    expect(broken.all('.recharts-line-curve')[0]?.getAttribute('d')?.match(/M/g)).toHaveLength(2);
  });

  test('draws the stop of a fan with each level in the dashes of its line, and a dot for each limit passed', () => {
    const stop = report.fanStop.chart;
    if (!stop) throw new Error('no chart');
    const { all, texts } = draw(stop);
    const dashes = (selector: string) =>
      all(selector).map((line) => line.getAttribute('stroke-dasharray')?.replace(/^0$/, ''));
    expect(dashes('.recharts-reference-line-line')).toEqual(dashes('.recharts-line-curve'));
    const named = [...stop.lines, ...stop.levels].map(({ label }) => label);
    expect(texts).toEqual(expect.arrayContaining(named));
    expect(all('.recharts-reference-dot-dot[r="4"]')).toHaveLength(stop.marks.length);
  });
});

const never = new Promise<never>(() => {});

function Late(): never {
  throw never;
}

test('the frame keeps the chart’s place and caption while the chart is on its way', () => {
  render(
    <ChartFrame caption="Fan against box" table={curvesTable(report)}>
      <Late />
    </ChartFrame>,
  );
  expect(screen.getByRole('figure').textContent).toBe('Fan against box');
});
