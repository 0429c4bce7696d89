import { evaluatePchip, preparePchip } from '../core/solve/pchip.ts';
import type { LimitKey, Outcome } from '../core/system/outcome.ts';
import type { Timeline, TimePoint } from '../core/system/timeline.ts';
import type { Design } from '../model/design.ts';
import type { FanStop } from '../studies/fanStop.ts';
import type { RatedLoad } from '../studies/ratedLoad.ts';
import type { Said } from './amount.ts';
import { duration, saidDuration } from './durations.ts';
import { amount, unitOf } from './format.ts';
import { limitPlaces } from './limitPlaces.ts';
import type { Level, Line, LineChart, Mark } from './lineChart.ts';
import { amountOf, figure, saidTemperature, withAmounts, worked } from './said.ts';
import type {
  FanStopReport,
  LabelFigure,
  NoteRow,
  RatingRow,
  TimeRow,
  UnitSystem,
  VerdictReport,
} from './types.ts';
import { verdictReport } from './verdictReport.ts';
import { limitLabels } from './wording.ts';
import { counted, listed, roundTicks, temperature, times, watts } from './words.ts';
import { boxFigures, ratedFigure, reachedFigure } from './working/figureIds.ts';

export function fanStopReport(
  design: Design,
  outcome: Outcome,
  study: FanStop,
  notes: readonly NoteRow[],
  system: UnitSystem,
): FanStopReport {
  const { reached, timeline } = study;
  const stopped = verdictReport(design, study.outcome, system);
  const running = verdictReport(design, outcome, system);
  const first = firstToAct(study);
  const act = first === null ? null : duration(first.time_s);
  const ratings = [
    ratingRow('running', study.running, running, system),
    ratingRow('stopped', study.stopped, stopped, system),
  ];
  return {
    sentence: sentenceOf(study, stopped, system),
    number: study.stopped && {
      text: watts(study.stopped.total_W, system),
      figure: ratedFigure('stopped'),
      of: 'load without fan',
    },
    label: labelOf(study, act, system),
    basis: study.running || study.stopped ? basisOf(design, system) : '',
    figures: figuresOf(ratings, timeline !== null, first),
    ratings,
    stopped,
    notes,
    act,
    reached: reached.map(({ key, time_s }) => ({
      key,
      label: limitLabels[key],
      ...withAmounts({ time: worked(reachedAfter(time_s), time_s === null ? null : reachedFigure(key)) }),
    })),
    chart: timeline ? chartOf(design, study, timeline, system) : null,
    heads: ['After', ...columns.map(({ label }) => label), 'Air'],
    times: timeline ? timeRows(timeline, system) : [],
  };
}

function reachedAfter(time_s: number | null): Said {
  if (time_s === null) return { text: 'not reached', value: null, unit: 's' };
  return time_s < 0.5 ? { text: 'at once', value: time_s, unit: 's' } : saidDuration(time_s);
}

/** What a maker has time for is a part: warm exhaust air harms none by itself. */
function firstToAct({ reached }: FanStop): { key: LimitKey; time_s: number } | null {
  for (const { key, time_s } of reached) if (key !== 'exhaust' && time_s !== null) return { key, time_s };
  return null;
}

function ratingRow(
  key: RatingRow['key'],
  rated: RatedLoad | null,
  verdict: VerdictReport,
  system: UnitSystem,
): RatingRow {
  const on = rated?.each_W.filter((power) => power > 0) ?? [];
  const most = Math.max(0, ...on);
  const least = Math.min(most, ...on);
  const each = most === least ? watts(most, system) : `${watts(least, system)} to ${watts(most, system)}`;
  const carried = rated !== null && rated.total_W > 0;
  const power = (power_W: number | null) => amountOf(power_W, 'power', system);
  return {
    key,
    label: key === 'running' ? 'with fan' : 'without fan',
    total: rated ? watts(rated.total_W, system) : '–',
    each: carried ? each : '–',
    amounts: {
      total: worked(power(rated?.total_W ?? null), rated ? ratedFigure(key) : null),
      least: power(carried ? least : null),
      most: power(carried ? most : null),
    },
    boundBy: rated ? limitLabels[rated.boundBy].toLowerCase() : '–',
    state: verdict.state,
    word: verdict.word,
    present:
      verdict.state === 'noAnswer' ? 'No answer for the present load' : `The present load ${verdict.word}`,
  };
}

function sentenceOf(study: FanStop, stopped: VerdictReport, system: UnitSystem): string {
  const { outcome, timeline, reached } = study;
  const without = study.stopped
    ? ` Without a fan this box may carry ${watts(study.stopped.total_W, system)} in all.`
    : '';
  if (!timeline) {
    return outcome.ok
      ? `Without fan, the present load ${stopped.word}.${without}`
      : `Without fan: ${stopped.sentence.charAt(0).toLowerCase()}${stopped.sentence.slice(1)}${without}`;
  }
  const passed = reached.flatMap(({ key, time_s }) =>
    time_s !== null && time_s >= 0.5 ? [`${inWords(key)} after ${duration(time_s)}`] : [],
  );
  const already = reached.flatMap(({ key, time_s }) =>
    time_s !== null && time_s < 0.5 ? [inWords(key)] : [],
  );
  const end = outcome.ok
    ? `; left alone, the hottest film ends at ${temperature(outcome.heat.positions[outcome.heat.hottest]?.film_K ?? 0, system)}`
    : '; left alone, it grows hotter than anything here bears';
  if (passed.length + already.length === 0)
    return `If the fan stops at full load, every limit still holds${end}.${without}`;
  const atOnce = already.length > 0 ? `${listed(already)} at once` : '';
  const said = [atOnce, ...passed.slice(0, 3)].filter((text) => text !== '');
  return `If the fan stops at full load, the box passes ${listed(said)}${end}.${without}`;
}

function inWords(key: LimitKey): string {
  return `the limit of ${limitPlaces[key]}`;
}

function labelOf(study: FanStop, act: string | null, system: UnitSystem): string {
  const { running, stopped, timeline } = study;
  if (!running || !stopped) return '';
  const time = !timeline
    ? ''
    : act === null
      ? ' After a stop of the fan nothing need be done.'
      : ` After a stop of the fan at the present load: ${act} to act.`;
  return `For the label: ${watts(running.total_W, system)} with fan, ${watts(stopped.total_W, system)} without.${time}`;
}

const noHurry: Said = { text: 'no hurry', value: null, unit: 's' };

function basisOf({ room, limits }: Design, system: UnitSystem): string {
  return `The ratings hold in a room of up to ${temperature(room.T_K, system)}, with ${times(limits.spareFactor)} spare on every temperature rise.`;
}

function figuresOf(
  ratings: readonly RatingRow[],
  isTimed: boolean,
  first: { readonly key: LimitKey; readonly time_s: number } | null,
): LabelFigure[] {
  const passed = first ? `then past ${inWords(first.key)}` : 'every limit holds for good';
  const act = first === null ? noHurry : saidDuration(first.time_s);
  return [
    ...ratings.map(({ key, label, total, each, boundBy, amounts }) => ({
      key,
      label: `rated ${label}`,
      value: total,
      amount: amounts.total,
      note: each === '–' ? '' : `${each} each; bounded by: ${boundBy}`,
    })),
    ...(isTimed
      ? [{ ...figure('act', 'to act if it stops', worked(act, first && boxFigures.act)), note: passed }]
      : []),
  ];
}

interface Column {
  readonly key: LimitKey;
  readonly label: string;
  readonly at: (point: TimePoint) => number;
  readonly style: Line['style'];
  readonly limit: string;
  /** @param last end of the time run */
  readonly limit_K: (design: Design, last: TimePoint) => number;
}

const columns: readonly Column[] = [
  {
    key: 'film',
    label: 'Film',
    at: ({ film_K }) => film_K,
    style: 'solid',
    limit: 'film limit',
    limit_K: hottestLimit_K,
  },
  {
    key: 'bond',
    label: 'Bond',
    at: ({ bond_K }) => bond_K,
    style: 'dotted',
    limit: 'bond limit',
    limit_K: ({ bond }) => bond.serviceLimit_K,
  },
  {
    key: 'sheet',
    label: 'Sink',
    at: ({ plate_K }) => plate_K,
    style: 'dashed',
    limit: 'plastic limit',
    limit_K: ({ box }) => box.softening_K,
  },
  {
    key: 'wall',
    label: 'Outside',
    at: ({ outside_K }) => outside_K,
    style: 'dashDot',
    limit: 'outside limit',
    limit_K: ({ limits }) => limits.wall_K,
  },
];

/** What the film may have that is hottest in the end. */
function hottestLimit_K(design: Design, { films_K }: TimePoint): number {
  const hottest = films_K.indexOf(Math.max(...films_K));
  return design.parts[design.positions[hottest]?.part ?? 0]?.zeroPowerAt_K ?? 0;
}

const samples = 72;
const pair = new Float64Array(2);

function chartOf(design: Design, study: FanStop, timeline: Timeline, system: UnitSystem): LineChart {
  const { points } = timeline;
  const last = points[points.length - 1] as TimePoint;
  const latest_s = study.reached.reduce((most, { time_s }) => Math.max(most, time_s ?? 0), 0);
  const end_s = Math.min(last.time_s, Math.max(600, 1.3 * latest_s));
  const show = (T_K: number) => amount(T_K, 'temperature', system);
  const minutes = (time_s: number) => time_s / 60;
  const times = points.map(({ time_s }) => time_s);
  const lines = columns.map(({ key, label, at, style }): Line => {
    const curve = preparePchip(times, points.map(at));
    return {
      key,
      label: label.toLowerCase(),
      style,
      points: Array.from({ length: samples + 1 }, (_, i) => {
        const time_s = (end_s * i) / samples;
        evaluatePchip(curve, time_s, pair);
        return { x: minutes(time_s), y: show(pair[0] as number) };
      }),
    };
  });
  const passed = columns.flatMap(({ key }) => {
    const time_s = study.reached.find((reached) => reached.key === key)?.time_s;
    return typeof time_s === 'number' && time_s > 0.5 && time_s < end_s ? [{ key, time_s }] : [];
  });
  // The time stands with the name of its level: beside an early dot there is no room for it.
  const levels = columns.map(({ key, limit, limit_K, style }): Level => {
    const time_s = passed.find((each) => each.key === key)?.time_s;
    const label = time_s === undefined ? limit : `${limit}, ${duration(time_s)}`;
    return { label, y: show(limit_K(design, last)), style };
  });
  const marks = passed.map(({ key, time_s }): Mark => {
    const column = columns.find((each) => each.key === key);
    return { label: '', x: minutes(time_s), y: show(column?.limit_K(design, last) ?? 0) };
  });
  const low_K = design.room.T_K;
  const count = study.reached.filter(({ time_s }) => time_s !== null && time_s < end_s).length;
  const high_K = Math.max(
    ...points.map((point) => (point.time_s <= end_s ? point.film_K : 0)),
    hottestLimit_K(design, last),
  );
  return {
    id: 'fanStop',
    caption: 'After the fan stops, at full load',
    xLabel: 'after the stop',
    xUnit: 'min',
    yUnit: unitOf('temperature', system),
    lines,
    levels,
    marks,
    xTicks: roundTicks(0, minutes(end_s)),
    yTicks: roundTicks(show(low_K), show(high_K)),
    spoken: `Temperatures over ${duration(end_s)} after the fan stops. ${count > 0 ? `${counted(count, 'limit is', 'limits are')} passed on the way.` : 'No limit is passed.'} Left alone, the film ends at ${temperature(last.film_K, system)}.`,
  };
}

/** Moments worth a row. */
const moments_s = [0, 10, 30, 60, 120, 300, 600, 1200, 1800, 3600, 7200, 14400];

function timeRows({ points }: Timeline, system: UnitSystem): TimeRow[] {
  const last = points[points.length - 1] as TimePoint;
  const times = points.map(({ time_s }) => time_s);
  const curves = [...columns.map(({ at }) => at), (point: TimePoint) => point.exhaust_K].map((at) =>
    preparePchip(times, points.map(at)),
  );
  return moments_s
    .filter((time_s) => time_s <= last.time_s)
    .map((time_s) => ({
      time: time_s === 0 ? { text: 'the stop', value: 0, unit: 's' } : saidDuration(time_s),
      cells: curves.map((curve) => {
        evaluatePchip(curve, time_s, pair);
        return saidTemperature(pair[0] as number, system);
      }),
    }));
}
