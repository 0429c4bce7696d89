import type { SystemInput } from '../../core/system/input.ts';
import { nearbySolver } from '../../core/system/nearbySolver.ts';
import { type Timeline, warmUp } from '../../core/system/timeline.ts';
import { courseAt, settledAt } from './computed.ts';
import { conditionsKey, type OnBench, onBench } from './conditions.ts';
import type { Computed, Reading } from './types.ts';

/** Readings that one run of the box gives: settled under the same conditions, or along one course of temperatures. */
export interface Group {
  readonly readings: readonly Reading[];
  /** Of the box in the middle; `null` where it has no load to be scaled. */
  readonly bench: OnBench | null;
  /** Values of these readings for a box like it. */
  readonly compute: (box: SystemInput) => Computed[];
}

export interface BenchModel {
  readonly groups: readonly Group[];
  /** Values of all readings, in their order, for a box like the one in the middle. */
  readonly compute: (box: SystemInput) => Computed[];
}

/** Of one step before its correction: what is left is some thousandths of a kelvin, so that slopes can be told. */
const courseTolerance_K = 0.1;

/** Readings by equal conditions, in the order in which these first appear. */
export function grouped(readings: readonly Reading[]): Reading[][] {
  const byKey = new Map<string, Reading[]>();
  for (const reading of readings) {
    const key = conditionsKey(reading);
    const known = byKey.get(key);
    if (known) known.push(reading);
    else byKey.set(key, [reading]);
  }
  return [...byKey.values()];
}

/**
 * All readings beside one box and its neighbours, one solve or one course for every group of equal conditions.
 * @param middle the box that others differ from by little
 */
export function benchModel(middle: SystemInput, readings: readonly Reading[]): BenchModel {
  const groups = grouped(readings).map((each) => groupOf(middle, each));
  const place = new Map(readings.map((reading, at) => [reading, at]));
  return {
    groups,
    compute: (box) => {
      const values: Computed[] = readings.map(() => ({ value: null, why: 'notFollowed' }));
      for (const group of groups) {
        const own = group.compute(box);
        group.readings.forEach((reading, i) => {
          values[place.get(reading) as number] = own[i] as Computed;
        });
      }
      return values;
    },
  };
}

/** @param readings of equal conditions, one at least */
export function groupOf(middle: SystemInput, readings: readonly Reading[]): Group {
  const [first] = readings as [Reading];
  const bench = onBench(middle, first);
  if (!bench) return { readings, bench, compute: () => readings.map(() => ({ value: null, why: 'noLoad' })) };
  const there = (box: SystemInput) => onBench(box, first)?.input ?? bench.input;
  if (first.time_s !== null)
    return { readings, bench, compute: (box) => along({ ...bench, input: there(box) }, readings) };
  const solve = nearbySolver(bench.input, bench.run);
  return {
    readings,
    bench,
    compute: (box) => {
      const outcome = solve(there(box));
      return readings.map((reading) => settledAt(reading, outcome));
    },
  };
}

/** One course of temperatures that stops at every moment that was read. */
function along({ input, run }: OnBench, readings: readonly Reading[]): Computed[] {
  const at_s = [...new Set(readings.map(({ time_s }) => time_s ?? 0))];
  const options = {
    horizon_s: Math.max(...at_s),
    tolerance_K: courseTolerance_K,
    untilSettled: false,
    at_s,
  };
  const course = warmUp(input, options, run);
  return readings.map((reading) => courseAt(reading, pointAt(course, reading.time_s ?? 0)));
}

function pointAt(course: Timeline | null, time_s: number) {
  return course?.points.find((point) => Math.abs(point.time_s - time_s) <= 1e-9 * (1 + time_s));
}
