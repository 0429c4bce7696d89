import { describe, expect, test } from 'vitest';
import type { LimitKey, Solved } from '../../../src/core/system/outcome.ts';
import type { Reached, Timeline, TimePoint } from '../../../src/core/system/timeline.ts';
import { toCore } from '../../../src/model/toCore.ts';
import { fanStopReport } from '../../../src/report/fanStopReport.ts';
import type { UnitSystem } from '../../../src/report/types.ts';
import { type FanStop, fanStop } from '../../../src/studies/fanStop.ts';
import type { RatedLoad } from '../../../src/studies/ratedLoad.ts';
import { exampleIds, sampleExample, sampleOf, sampleWithoutAnswer } from '../../helpers/sampleReport.ts';

const { design, outcome } = sampleExample('eightResistors');
const plain = (text: string) => text.replaceAll('\u202f', ' ');

function solvedAt(film_K: number): Solved {
  if (!outcome.ok) throw new Error('the example has no answer');
  const positions = outcome.heat.positions.map((position) => ({ ...position, film_K }));
  return { ...outcome, heat: { ...outcome.heat, positions, hottest: 0 } };
}

function rated(each_W: readonly number[], boundBy: LimitKey = 'film'): RatedLoad {
  return { factor: 1, total_W: each_W.reduce((sum, power_W) => sum + power_W, 0), each_W, boundBy };
}

const at = (time_s: number, film_K: number): TimePoint => ({
  time_s,
  film_K,
  bond_K: film_K - 5,
  plate_K: film_K - 20,
  outside_K: film_K - 40,
  joint_K: film_K - 2,
  exhaust_K: film_K - 30,
  films_K: [film_K],
  joints_K: [film_K - 2],
  sinks_K: [film_K - 20],
  outsides_K: [film_K - 40],
  flow_m3PerS: 1e-5,
  margins_K: {},
});

/** Film at 90 °C as the fan stops, at 150 °C an hour later, a kelvin a minute on the way. */
const timeline: Timeline = {
  points: [0, 60, 300, 600, 1800, 3600].map((time_s) => at(time_s, 363.15 + time_s / 60)),
  settled: true,
  energy: { put_J: 1, left_J: 1, stored_J: 0, imbalance: 0 },
};

const passing: readonly Reached[] = [
  { key: 'exhaust', time_s: 0 },
  { key: 'derating', time_s: 31.2 },
  { key: 'sheet', time_s: 68.6 },
  { key: 'bond', time_s: 140 },
  { key: 'joint', time_s: 170 },
  { key: 'film', time_s: null },
];

const study = (change: Partial<FanStop> = {}): FanStop => ({
  outcome: solvedAt(423.15),
  running: rated([3.5, 3.5, 0]),
  stopped: rated([0.5, 1, 0], 'exhaust'),
  timeline,
  reached: passing,
  ...change,
});

const reportOf = (change: Partial<FanStop> = {}, system: UnitSystem = 'metric') =>
  fanStopReport(design, solvedAt(363.15), study(change), [], system);
const sentenceOf = (change: Partial<FanStop>) => plain(reportOf(change).sentence);

describe('the sentence about a stop', () => {
  test('says what is passed at once, then up to three limits with their times, the end, and the rating without', () => {
    expect(sentenceOf({})).toBe(
      'If the fan stops at full load, the box passes the limit of the exhaust air at once, the limit of the derating line after 31 s, the limit of the plastic beside the sinks after 69 s and the limit of the bond lines after 2 min 20 s; left alone, the hottest film ends at 150 °C. Without a fan this box may carry 1.5 W in all.',
    );
  });

  test('says so where every limit still holds', () => {
    expect(sentenceOf({ reached: [{ key: 'film', time_s: null }], outcome: solvedAt(366.15) })).toBe(
      'If the fan stops at full load, every limit still holds; left alone, the hottest film ends at 93 °C. Without a fan this box may carry 1.5 W in all.',
    );
  });

  test('says that it never ends where it does not, and nothing of a rating that is not known', () => {
    const away = { ok: false, reason: 'runaway', details: {} } as const;
    expect(sentenceOf({ outcome: away, stopped: null, reached: [{ key: 'film', time_s: 12 }] })).toBe(
      'If the fan stops at full load, the box passes the limit of the film after 12 s; left alone, it grows hotter than anything here bears.',
    );
  });

  test('judges the load without fan where the running box has no answer to start from', () => {
    const { sentence, chart, times } = reportOf({ timeline: null, reached: [], outcome: solvedAt(366.15) });
    expect(plain(sentence)).toMatch(/^Without fan, the present load .*\. Without a fan .* 1\.5 W in all\.$/);
    expect(chart).toBeNull();
    expect(times).toEqual([]);
  });

  test('speaks the reader’s degrees', () => {
    expect(plain(reportOf({}, 'inch').sentence)).toContain('ends at 302 °F');
  });
});

describe('the words for a label', () => {
  test('give both ratings and the time to the first limit of a part; warm exhaust air is none', () => {
    const { act, label } = reportOf();
    expect(plain(act ?? '')).toBe('31 s');
    expect(plain(label)).toBe(
      'For the label: 7 W with fan, 1.5 W without. After a stop of the fan at the present load: 31 s to act.',
    );
  });

  test('ask for nothing where no part passes its limit', () => {
    const { act, label } = reportOf({ reached: [{ key: 'exhaust', time_s: 5 }] });
    expect(act).toBeNull();
    expect(plain(label)).toBe(
      'For the label: 7 W with fan, 1.5 W without. After a stop of the fan nothing need be done.',
    );
  });

  test('leave the time out without a timeline, and say nothing where a rating is missing', () => {
    expect(plain(reportOf({ timeline: null, reached: [] }).label)).toBe(
      'For the label: 7 W with fan, 1.5 W without.',
    );
    expect(reportOf({ stopped: null }).label).toBe('');
    expect(reportOf({ running: null }).label).toBe('');
  });

  test('are the figures of a sheet, the time only where there is one', () => {
    const said = (change: Partial<FanStop>) =>
      reportOf(change).figures.map(({ label, value }) => plain(`${label}: ${value}`));
    const ratings = ['rated with fan: 7 W', 'rated without fan: 1.5 W'];
    expect(said({})).toEqual([...ratings, 'to act if it stops: 31 s']);
    expect(said({ reached: [] })).toEqual([...ratings, 'to act if it stops: no hurry']);
    expect(said({ timeline: null, reached: [] })).toEqual(ratings);
  });
});

describe('the ratings', () => {
  test('stand side by side with watts, what bounds them, and the verdict on the present load', () => {
    const [running, stopped] = reportOf().ratings;
    expect(running).toMatchObject({ key: 'running', label: 'with fan', boundBy: 'film, hottest spot' });
    expect(stopped).toMatchObject({ key: 'stopped', label: 'without fan', boundBy: 'exhaust air' });
    expect(plain(running?.each ?? '')).toBe('3.5 W');
    expect(plain(stopped?.each ?? '')).toBe('0.5 W to 1 W');
  });

  test('of nothing known are dashes, and of no watts at all have none for each', () => {
    expect(reportOf({ stopped: null }).ratings[1]).toMatchObject({ total: '–', each: '–', boundBy: '–' });
    const [, none] = reportOf({ stopped: rated([0, 0], 'sheet') }).ratings;
    expect(plain(none?.total ?? '')).toBe('0 W');
    expect(none?.each).toBe('–');
  });
});

test('limits are listed in the order they are reached: at once, after a time, never', () => {
  const times = reportOf().reached.map(({ label, time }) => plain(`${label}: ${time}`));
  expect(times[0]).toBe('Exhaust air: at once');
  expect(times[1]).toBe('Derating line: 31 s');
  expect(times.at(-1)).toBe('Film, hottest spot: not reached');
});

test('notes that only the box without fans brings stand with it', () => {
  const note = { code: 'lyingFins', severity: 'caution', severityWord: 'Caution', text: 'Lying.' } as const;
  expect(fanStopReport(design, outcome, study(), [note], 'metric').notes).toEqual([note]);
});

describe('the temperatures after a stop', () => {
  test('are lines in minutes that pass through the points of the timeline', () => {
    const { chart } = reportOf({ reached: [{ key: 'film', time_s: 3000 }] });
    const film = chart?.lines.find(({ key }) => key === 'film')?.points ?? [];
    expect(chart?.xUnit).toBe('min');
    expect(film.at(-1)?.x).toBeCloseTo(60, 9);
    for (const { x, y } of film) expect(y).toBeCloseTo(90 + x, 6);
  });

  test('are drawn until a third past the last limit, but ten minutes at least and no farther than known', () => {
    const endOf = (time_s: number | null) =>
      reportOf({ reached: [{ key: 'film', time_s }] }).chart?.lines[0]?.points.at(-1)?.x;
    expect(endOf(1000)).toBeCloseTo((1.3 * 1000) / 60, 9);
    expect(endOf(20)).toBeCloseTo(10, 9);
    expect(endOf(null)).toBeCloseTo(10, 9);
    expect(endOf(3500)).toBeCloseTo(60, 9);
  });

  test('have a level of the same dashes for each line, with the time and a dot where it is passed', () => {
    const { chart } = reportOf({ reached: [{ key: 'bond', time_s: 1200 }] });
    expect(chart?.levels.map(({ style }) => style)).toEqual(chart?.lines.map(({ style }) => style));
    const level = chart?.levels.find(({ label }) => label === 'bond limit, 20\u202fmin');
    expect(level?.y).toBeCloseTo(design.bond.serviceLimit_K - 273.15, 9);
    expect(chart?.marks).toEqual([{ label: '', x: 20, y: level?.y }]);
  });

  test('are told in a table of moments, as far as the timeline goes', () => {
    const { heads, times } = reportOf();
    expect(times.map(({ time }) => plain(time.text))).toEqual([
      'the stop',
      '10 s',
      '30 s',
      '60 s',
      '2 min',
      '5 min',
      '10 min',
      '20 min',
      '30 min',
      '1 h',
    ]);
    for (const { cells } of times) expect(cells).toHaveLength(heads.length - 1);
    expect(times.at(-1)?.cells.map(({ text }) => plain(text))).toEqual([
      '150 °C',
      '145 °C',
      '130 °C',
      '110 °C',
      '120 °C',
    ]);
  });
});

describe.each(exampleIds)('the stop in %s', (id) => {
  const { report, design: example } = sampleExample(id);
  const stop = report.fanStop;

  test('is told in a sentence, with both ratings beside it, the one with fan that of the headline', () => {
    expect(stop.sentence).toMatch(/^If the fan stops at full load, .*\d.*\.$/);
    expect(stop.ratings.map(({ label }) => label)).toEqual(['with fan', 'without fan']);
    expect(stop.ratings[0]?.total).toBe(report.ratings?.total);
    expect(stop.label).toContain(stop.ratings[1]?.total ?? 'none');
  });

  test('has a row for every limit of the study, in its order', () => {
    const { reached } = fanStop(toCore(example));
    expect(stop.reached.map(({ key }) => key)).toEqual(reached.map(({ key }) => key));
  });

  test('begins at the film of the running box', () => {
    const film = report.figures.find(({ key }) => key === 'film')?.value;
    expect(stop.times[0]?.cells[0]?.text).toBe(film);
  });

  test('marks each limit where its line crosses it', () => {
    const names = { film: 'film', bond: 'bond', plastic: 'sheet', outside: 'wall' } as const;
    const { lines = [], levels = [], marks = [] } = stop.chart ?? {};
    expect(marks.length).toBeGreaterThan(0);
    for (const { x, y } of marks) {
      const crossed = levels.filter((level) => level.y === y).map(({ label }) => label.split(' ')[0]);
      const line = lines.find(({ key }) => crossed.some((name) => names[name as keyof typeof names] === key));
      const after = line?.points.findIndex((point) => point.x >= x) ?? -1;
      expect(line?.points[after - 1]?.y).toBeLessThanOrEqual(y);
      expect(line?.points[after]?.y).toBeGreaterThanOrEqual(y);
    }
  });
});

test('a fan that does not start still has a rating without it, and no time to act', () => {
  const { fanStop: stop } = sampleWithoutAnswer().report;
  expect(stop.sentence).toMatch(
    /^Without fan, the present load .* Without a fan this box may carry [\d.]+\sW/,
  );
  expect([stop.chart, stop.act, stop.label]).toEqual([null, null, '']);
  expect(stop.reached).toEqual([]);
  expect(stop.ratings.map(({ word }) => word)).toEqual(['no answer', 'does not hold']);
  expect(stop.ratings[0]?.total).toBe('–');
});

test('a box that lies flat is warned of the fins only where nothing but warmth moves the air', () => {
  const { report } = sampleOf({ ...design, box: { ...design.box, tilt_rad: Math.PI / 2 } });
  expect(report.notes.map(({ code }) => code)).not.toContain('lyingFins');
  expect(report.fanStop.notes.map(({ code }) => code)).toContain('lyingFins');
});
