import { ordinaryRun } from '../../core/system/input.ts';
import type { Design } from '../../model/design.ts';
import type { Job } from '../job.ts';
import { type Trial, tryValues } from '../vary.ts';
import { type GapKey, gapRoom, gapValues, presentGap_m, type Room } from './gap.ts';
import { type Knee, kneeOf, steeperBranch } from './knee.ts';
import { type Tried, type VerdictChange, verdictChanges } from './verdictChanges.ts';

/** What becomes of a design as one gap of its baffle is cut tighter or looser. */
export interface GapQuestion {
  readonly design: Design;
  readonly gap: GapKey;
  /** Rising, each once, inside the hard limits of the gap. What the design has now is always taken besides. */
  readonly values_m: readonly number[];
  /** So far a cut may be off, either way. */
  readonly cut_m: number;
}

/** One gap, and what it comes to. */
export interface GapPoint {
  readonly at_m: number;
  readonly trial: Trial;
  /** Asked for, or what the design has now; the others only draw the curve. */
  readonly isRow: boolean;
  /** Coldest and hottest that the film may be with the cut off either way; `null` without an answer. */
  readonly band_K: readonly [coldest: number, hottest: number] | null;
}

/** What is asked once, besides the values. */
interface GapEnds {
  readonly present: Trial | null;
  /** The same design with its baffle left out. */
  readonly none: Trial;
  /** Of the hottest film, at the present value; `null` without a baffle or an answer. */
  readonly slope_KPerM: number | null;
  /** What can be built. */
  readonly room: Room;
  /** Least and most that were looked at for changes of the verdict: farther than the values asked for. */
  readonly looked_m: readonly [least: number, most: number];
  readonly changes: readonly VerdictChange[];
}

/** From one row up to the next. */
interface GapSpan {
  readonly points: readonly GapPoint[];
  readonly changes: readonly VerdictChange[];
}

export type GapPiece = GapEnds | GapSpan;

export interface GapLine extends GapEnds {
  /** By rising gap; changes of the verdict likewise. */
  readonly points: readonly GapPoint[];
  readonly knee: Knee | null;
  /** `null` where no value has an answer. */
  readonly coolest: { readonly at_m: number; readonly film_K: number } | null;
}

/** Points that draw the curve, about. */
const curvePoints = 40;
/** How closely a change of the verdict is found. */
const within_m = 1e-5;
/** To both sides of the present value, for the slope there. */
const slopeStep_m = 5e-5;
/** How far beyond the values asked for the verdict is looked at: so many times the last, or that part of the first. */
const farther = 3;
const beyondSteps = 6;
/** A knee in less than this is none. */
const leastChange_K = 1;

export const gapLineJob: Job<GapQuestion, GapPiece, GapLine> = {
  count: (question) => 1 + rowValues_m(question).length,
  piece: (question, index) => (index === 0 ? ends(question) : span(question, index - 1)),
  gather: (_, pieces) => {
    const [first, ...spans] = pieces as readonly [GapEnds, ...GapSpan[]];
    const points = spans.flatMap((each) => each.points);
    const curve = points.flatMap(({ at_m, trial }) =>
      trial.ok ? [{ x: at_m, y: trial.outputs.film_K }] : [],
    );
    const { points: branch, change } = steeperBranch(curve);
    const least = curve.reduce<(typeof curve)[number] | null>((a, b) => (a && a.y <= b.y ? a : b), null);
    return {
      ...first,
      points,
      changes: [first, ...spans].flatMap((each) => each.changes).sort((a, b) => a.before_m - b.before_m),
      knee: change < leastChange_K ? null : kneeOf(branch),
      coolest: least && { at_m: least.x, film_K: least.y },
    };
  },
};

/** The values asked for and what the design has now. */
export function rowValues_m({ design, gap, values_m }: GapQuestion): number[] {
  const present_m = presentGap_m(design, gap);
  if (present_m === null) return [...values_m];
  const others = values_m.filter((at_m) => Math.abs(at_m - present_m) > 1e-9);
  return [...others, present_m].sort((a, b) => a - b);
}

function ends(question: GapQuestion): GapEnds {
  const { design, gap } = question;
  const room = gapRoom(design, gap);
  const present_m = presentGap_m(design, gap);
  return {
    present: present_m === null ? null : tryValues(design, {}, ordinaryRun),
    none: tryValues(design, gapValues(gap, null), ordinaryRun),
    slope_KPerM: present_m === null ? null : slope_KPerM(design, gap, present_m, room),
    room,
    ...beyond(question, room),
  };
}

/** Over a tenth of a millimetre, or the half of it that can be built. */
function slope_KPerM(design: Design, gap: GapKey, at_m: number, room: Room): number | null {
  const low_m = Math.max(room.least_m, at_m - slopeStep_m);
  const high_m = Math.min(room.most_m, at_m + slopeStep_m);
  const [low, high] = [low_m, high_m].map((each_m) => tryValues(design, gapValues(gap, each_m)));
  if (!low?.ok || !high?.ok || !(high_m > low_m)) return null;
  return (high.outputs.film_K - low.outputs.film_K) / (high_m - low_m);
}

/** Changes of the verdict below and above the rows, as far as can be built and a maker might go. */
function beyond(question: GapQuestion, room: Room): Pick<GapEnds, 'looked_m' | 'changes'> {
  const rows_m = rowValues_m(question);
  const [first_m = 0, last_m = first_m] = [rows_m[0], rows_m.at(-1)];
  const least_m = Math.max(room.least_m, first_m / farther);
  const most_m = Math.min(room.most_m, last_m * farther);
  const attempt = trialOf(question);
  const chain = (from_m: number, to_m: number) =>
    Array.from({ length: beyondSteps + 1 }, (_, i) => from_m + ((to_m - from_m) * i) / beyondSteps).map(
      (at_m) => ({ at_m, trial: attempt(at_m) }),
    );
  const found = [
    ...(least_m < first_m ? verdictChanges(chain(least_m, first_m), attempt, within_m) : []),
    ...(most_m > last_m ? verdictChanges(chain(last_m, most_m), attempt, within_m) : []),
  ];
  return { looked_m: [least_m, most_m], changes: found };
}

function trialOf({ design, gap }: GapQuestion): (at_m: number) => Trial {
  return (at_m) => tryValues(design, gapValues(gap, at_m), ordinaryRun);
}

function span(question: GapQuestion, index: number): GapSpan {
  const { design, gap } = question;
  const rows_m = rowValues_m(question);
  const room = gapRoom(design, gap);
  const attempt = trialOf(question);
  const from_m = rows_m[index] as number;
  const to_m = rows_m[index + 1] ?? from_m;
  const all_m = (rows_m.at(-1) as number) - (rows_m[0] as number);
  const points = [from_m, ...between(from_m, to_m, all_m)].map((at_m, i): GapPoint => {
    const isRow = i === 0;
    const trial = isRow ? attempt(at_m) : tryValues(design, gapValues(gap, at_m));
    return { at_m, trial, isRow, band_K: bandOf(question, at_m, trial, room) };
  });
  if (to_m === from_m) return { points, changes: [] };
  // Verdicts count the pulses; the points that only draw the curve were tried without.
  const judged: readonly Tried[] = design.load.duty < 1 ? points.slice(0, 1) : points;
  return {
    points,
    changes: verdictChanges(
      [...judged, { at_m: to_m, trial: attempt(to_m) }],
      attempt,
      Math.min(within_m, 0.02 * (to_m - from_m)),
    ),
  };
}

/** Even steps inside a span that draw its part of the curve. */
function between(from_m: number, to_m: number, all_m: number): number[] {
  const count = all_m > 0 ? Math.ceil((curvePoints * (to_m - from_m)) / all_m) : 0;
  return Array.from(
    { length: Math.max(0, count - 1) },
    (_, i) => from_m + ((to_m - from_m) * (i + 1)) / count,
  );
}

function bandOf(
  { design, gap, cut_m }: GapQuestion,
  at_m: number,
  trial: Trial,
  room: Room,
): GapPoint['band_K'] {
  if (!trial.ok) return null;
  const off = [Math.max(room.least_m, at_m - cut_m), Math.min(room.most_m, at_m + cut_m)];
  const tries = [trial, ...off.map((each_m) => tryValues(design, gapValues(gap, each_m)))];
  const films = tries.flatMap((each) => (each.ok ? [each.outputs.film_K] : []));
  return [Math.min(...films), Math.max(...films)];
}
