import { lastOutside_s } from '../../core/system/drift.ts';
import { ordinaryTimeline, type Timeline, warmUp } from '../../core/system/timeline.ts';
import { courseAt } from './computed.ts';
import type { OnBench } from './conditions.ts';
import type { AdvisedRun, Candidate, Course, Reading, Wait } from './types.ts';

/** Of the instrument’s uncertainty: as little as this from the end adds next to nothing to it. */
const leftShare = 1 / 3;
const longest_s = 48 * 3600;

/** How long to wait at each place that could be read, from a cold box on; nothing where the course is not followed. */
export function courseOf(
  { input, run: how }: OnBench,
  run: AdvisedRun,
  candidates: readonly Candidate[],
): Course {
  const options = { ...ordinaryTimeline, horizon_s: longest_s, tolerance_K: 0.1 };
  const course = warmUp(input, options, how);
  if (!course) return { run, waits: [], slowest_s: null };
  const places = candidates.filter(({ kind }) => kind === 'temperature');
  const waits = places.map((candidate): Wait => {
    const left_K = leftShare * candidate.within;
    const away = awayOf(course, candidate);
    const time_s = lastOutside_s(course.points, (point) => away[course.points.indexOf(point)] ?? 0, left_K);
    return {
      where: candidate.where ?? 'inExhaust',
      number: candidate.number,
      time_s,
      end_K: candidate.computed,
      left_K,
    };
  });
  const tails = places.map((candidate) => tail_s(course, awayOf(course, candidate)));
  const slowest_s = tails.reduce<number | null>(
    (most, each) => (each === null || (most !== null && most > each) ? most : each),
    null,
  );
  return { run, waits, slowest_s };
}

/** Kelvin from the end, at every point of the course. */
function awayOf({ points }: Timeline, candidate: Candidate): number[] {
  const reading: Reading = { ...candidate, index: 0, path: '', value: 0 };
  return points.map((point) => (courseAt(reading, point).value ?? candidate.computed) - candidate.computed);
}

/** Less than this is left to steps and rounding. */
const worthFollowing_K = 0.2;

/** Time constant of what is left once a third is left, down to a thirtieth: the slowest part of the box alone by then. */
function tail_s({ points }: Timeline, away: readonly number[]): number | null {
  const whole = Math.abs(away[0] ?? 0);
  const at = (share: number) => away.findIndex((each) => Math.abs(each) <= share * whole);
  const from = at(1 / 3);
  const to = at(1 / 30);
  const first = Math.abs(away[from] ?? 0);
  const last = Math.abs(away[to] ?? 0);
  if (!(from >= 0 && to > from && whole > worthFollowing_K && last > 0 && first > last)) return null;
  const took_s = (points[to]?.time_s ?? 0) - (points[from]?.time_s ?? 0);
  return took_s / Math.log(first / last);
}
