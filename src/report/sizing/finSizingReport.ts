import type { FinQuestion, FinResult } from '../../studies/sizing/finSizing.ts';
import type { FinPoint } from '../../studies/sizing/finTrial.ts';
import { amount, type Dimension, plain, quantity, unitOf } from '../format.ts';
import type { LineChart, Mark } from '../lineChart.ts';
import type { StudyReport } from '../studyReport.ts';
import type { TextTable, UnitSystem } from '../types.ts';
import { capital, counted, kelvins, listed, roundTicks, temperature } from '../words.ts';
import { type FinRow, finRow, finTable, finWords, isPresent, isSame } from './finRows.ts';
import { shortOf } from './targetWords.ts';

export interface FinSizingReport extends StudyReport {
  /** The best within all bounds. */
  readonly pick: FinRow | null;
  readonly present: FinRow | null;
  /** At the present supply, the best of every count. */
  readonly byCount: readonly FinRow[];
  readonly overSound: Front;
  readonly overPressure: Front;
}

export interface Front {
  readonly chart: LineChart | null;
  readonly rows: readonly FinRow[];
  readonly table: TextTable;
}

const mostRows = 12;

const basis =
  'How deep an end mill reaches and how thin a fin it leaves standing is the workshop’s own affair; the usual values here are common practice, no source.';

/** The best fins within the workshop's rules, and what less sound or less pressure would cost. */
export function finSizingReport(
  question: FinQuestion,
  result: FinResult,
  system: UnitSystem,
): FinSizingReport {
  const rows = (points: readonly FinPoint[]) => points.map((point) => finRow(question, point, system));
  const [pick = null] = rows(result.pick ? [result.pick] : []);
  const [present = null] = rows(result.now ? [result.now] : []);
  const byCount = rows(result.byCount.slice(0, mostRows));
  const front = (points: readonly FinPoint[], against: Against): Front => ({
    chart: frontChart(points, result, against, system),
    rows: rows(points),
    table: finTable(against.id, against.caption, rows(points)),
  });
  const overSound = front(result.overSound, sound);
  const overPressure = front(result.overPressure, pressure);
  return {
    sentence: sentenceOf(question, result, pick, system),
    remarks: [rulesOf(question, result, system), basis],
    pick,
    present,
    byCount,
    overSound,
    overPressure,
    tables: [
      finTable('fin-sets', 'Best fins of every count, at the present fan supply', byCount),
      overSound.table,
      overPressure.table,
    ],
  };
}

function sentenceOf(
  question: FinQuestion,
  result: FinResult,
  pick: FinRow | null,
  system: UnitSystem,
): string {
  const { design, target } = question;
  if (result.sets === 0) return `No fins can be cut by these rules: ${inTheWay(question, result, system)}.`;
  if (result.pick === null || pick === null) return outOfBounds(result, system);
  if (isPresent(design, result.pick))
    return `The present fins are the best that these rules allow: ${finWords(pick)}.`;
  const lead = `Best of ${counted(result.sets, 'set')} that these rules allow: ${finWords(pick)}`;
  const outcome = `hottest film ${pick.film} at ${pick.supply}${compared(result.pick, result, system)}`;
  const met =
    result.pick.left_K >= 0
      ? 'The target is met.'
      : `The target stays out of reach: ${shortOf(result.pick.limit, result.pick.left_K, target, system)}.`;
  return `${lead}; ${outcome}. ${met}${quieter(result, system)}`;
}

/** ", 2.1 K warmer than the present 9 fins, which these rules do not allow". */
function compared(pick: FinPoint, { now, nowAllowed }: FinResult, system: UnitSystem): string {
  if (now === null) return '';
  const off_K = pick.film_K - now.film_K;
  const allowed = nowAllowed ? '' : ', which these rules do not allow';
  const than = `the present ${now.count} fins${allowed}`;
  return Math.abs(off_K) < 0.05
    ? `, as with ${than}`
    : `, ${kelvins(Math.abs(off_K), system, 1)} ${off_K > 0 ? 'warmer' : 'cooler'} than with ${than}`;
}

function quieter({ overSound }: FinResult, system: UnitSystem): string {
  const [quiet] = overSound;
  const loud = overSound.at(-1);
  if (!quiet || !loud || isSame(quiet, loud)) return '';
  const cost = kelvins(quiet.film_K - loud.film_K, system, 1);
  return ` Between the loudest and the quietest, ${said(loud, system)} and ${said(quiet, system)}, lie ${cost}.`;
}

function said({ sound_dBA }: FinPoint, system: UnitSystem): string {
  return quantity(sound_dBA, 'soundLevel', system, 2);
}

/** Why the rules leave no set at all. */
function inTheWay({ design, rules }: FinQuestion, { heightInBox_m }: FinResult, system: UnitSystem): string {
  const length = (value_m: number) => quantity(value_m, 'length', system, 3);
  const least_m = Math.min(...rules.cutters_m);
  const thinnest_m = Math.min(...rules.thicknesses_m.filter((t_m) => t_m >= rules.leastThickness_m));
  if (!Number.isFinite(thinnest_m))
    return `every thickness at hand is below ${length(rules.leastThickness_m)}`;
  if (least_m + 2 * thinnest_m > design.sink.width_m)
    return `an end mill of ${length(least_m)} leaves no two fins on a sink ${length(design.sink.width_m)} wide`;
  if (heightInBox_m < rules.leastHeight_m)
    return `the box has room for fins ${length(Math.max(0, heightInBox_m))} high, less than the ${length(rules.leastHeight_m)} asked for`;
  const deepest_m = Math.max(...rules.cutters_m) * rules.depthRatio;
  return `the deepest slot is ${length(deepest_m)}, less than the ${length(rules.leastHeight_m)} asked for`;
}

function outOfBounds({ overSound, overPressure }: FinResult, system: UnitSystem): string {
  const [quiet] = overSound;
  const [easy] = overPressure;
  if (!quiet || !easy) return 'None of the sets that these rules allow has an answer in this box.';
  return `Nothing stays within these bounds: the quietest is ${said(quiet, system)}, and the least that is asked of the fan ${quantity(easy.pressure_Pa, 'pressure', system, 3)}.`;
}

function rulesOf({ rules }: FinQuestion, { heightInBox_m, sets }: FinResult, system: UnitSystem): string {
  const length = (value_m: number) => quantity(value_m, 'length', system, 3);
  const high_m = Math.max(0, Math.min(rules.mostHeight_m, heightInBox_m));
  return `Searched: ${counted(sets, 'set')} of fins ${listed(rules.thicknesses_m.map(length))} thick with slots for an end mill of ${rules.cutters_m.map(length).join(' or ')}, at most ${plain(rules.depthRatio)} of its diameters deep; fins ${length(rules.leastHeight_m)} to ${length(high_m)} high, width and length of the sinks as they are, at supplies from where the fan starts up to the present one.`;
}

interface Against {
  readonly id: string;
  readonly caption: string;
  readonly label: string;
  readonly dimension: Dimension;
  readonly of: (point: FinPoint) => number;
}

const sound: Against = {
  id: 'fins-over-sound',
  caption: 'Coolest film at every sound level',
  label: 'sound',
  dimension: 'soundLevel',
  of: ({ sound_dBA }) => sound_dBA,
};

const pressure: Against = {
  id: 'fins-over-pressure',
  caption: 'Coolest film at every fan pressure',
  label: 'fan pressure',
  dimension: 'pressure',
  of: ({ pressure_Pa }) => pressure_Pa,
};

/** Film over what it costs; `null` where there is but one point. */
function frontChart(
  points: readonly FinPoint[],
  { now, nowOver, pick }: FinResult,
  { id, caption, label, dimension, of }: Against,
  system: UnitSystem,
): LineChart | null {
  if (points.length < 2) return null;
  const place = (point: FinPoint) => ({
    x: amount(of(point), dimension, system),
    y: amount(point.film_K, 'temperature', system),
  });
  const line = points.map(place);
  const present = nowOver.map(place);
  // Two lines can be drawn over each other where they are known at the same places.
  const isBeside =
    present.length === line.length && line.every(({ x }, i) => Math.abs(x - (present[i]?.x ?? 0)) < 1e-6);
  // A line is named at its end; a mark that stands there needs no name of its own.
  const marks: Mark[] = [
    ...(pick ? [{ label: isSame(pick, points.at(-1)) ? '' : 'chosen', ...place(pick) }] : []),
    ...(now ? [{ label: isBeside ? '' : 'now', ...place(now) }] : []),
  ];
  const all = [...line, ...marks, ...(isBeside ? present : [])];
  const [xs, ys] = [all.map(({ x }) => x), all.map(({ y }) => y)];
  const [first, last] = [points[0] as FinPoint, points.at(-1) as FinPoint];
  return {
    id: `${id}-chart`,
    caption,
    xLabel: label,
    xUnit: unitOf(dimension, system),
    yUnit: unitOf('temperature', system),
    lines: [
      { key: 'front', label: 'best', style: 'solid', points: line },
      ...(isBeside
        ? [
            {
              key: 'now',
              label: 'now',
              style: 'dashed',
              points: line.map(({ x }, i) => ({ x, y: present[i]?.y ?? null })),
            } as const,
          ]
        : []),
    ],
    levels: [],
    marks,
    xTicks: roundTicks(Math.min(...xs), Math.max(...xs)),
    yTicks: roundTicks(Math.min(...ys), Math.max(...ys)),
    spoken: `${capital(caption)}: from ${temperature(first.film_K, system)} at ${quantity(of(first), dimension, system, 3)} to ${temperature(last.film_K, system)} at ${quantity(of(last), dimension, system, 3)}.`,
  };
}
