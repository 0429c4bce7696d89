import { toCore } from '../../model/toCore.ts';
import type { Job } from '../job.ts';
import { grouped, groupOf } from './benchModel.ts';
import { readingsOf } from './readingsOf.ts';
import type { BenchQuestion, Conditions, Reading } from './types.ts';

/** The warm-up that most readings were taken of, as computed; one line a place. */
export interface BenchCourse {
  readonly conditions: Conditions;
  readonly lines: readonly CourseLine[];
}

export interface CourseLine extends Pick<Reading, 'kind' | 'where' | 'number'> {
  /** Indices of the readings taken there, in the order of the design. */
  readonly readings: readonly number[];
  readonly points: readonly { readonly time_s: number; readonly T_K: number | null }[];
}

/** As many places as a chart tells apart by dashes. */
const mostPlaces = 4;
const moments = 60;
/** Points stand closer together at the beginning, where it is steep. */
const crowding = 1.6;

/** `null` where no two readings were taken of one warm-up, or the box has no load. */
export function benchCourse({ design }: BenchQuestion): BenchCourse | null {
  const timed = readingsOf(design).filter(({ time_s }) => time_s !== null && time_s > 0);
  const run = grouped(timed).sort((a, b) => b.length - a.length)[0];
  const first = run?.[0];
  if (run === undefined || first === undefined || run.length < 2) return null;
  const places = byPlace(run);
  const end_s = Math.max(...places.flat().map(({ time_s }) => time_s ?? 0));
  const times = Array.from({ length: moments }, (_, i) => end_s * ((i + 1) / moments) ** crowding);
  const asked = places.flatMap(([place]) =>
    times.map((time_s): Reading => ({ ...(place as Reading), time_s })),
  );
  const input = toCore(design);
  const found = groupOf(input, asked).compute(input);
  const lines = places.map((readings, at): CourseLine => {
    const { kind, where, number } = readings[0] as Reading;
    const computed = found.slice(at * moments, (at + 1) * moments);
    return {
      kind,
      where,
      number,
      readings: readings.map(({ index }) => index),
      points: [
        { time_s: 0, T_K: first.room_K },
        ...computed.map(({ value }, i) => ({ time_s: times[i] as number, T_K: value })),
      ],
    };
  });
  const isFollowed = lines.some(({ points }) => points.slice(1).some(({ T_K }) => T_K !== null));
  const { load_W, room_K, fan_V } = first;
  return isFollowed ? { conditions: { load_W, room_K, fan_V, time_s: null }, lines } : null;
}

/** Those that were read most often. */
function byPlace(run: readonly Reading[]): Reading[][] {
  const places = new Map<string, Reading[]>();
  for (const reading of run) {
    const key = `${reading.where} ${reading.number}`;
    places.set(key, [...(places.get(key) ?? []), reading]);
  }
  return [...places.values()].sort((a, b) => b.length - a.length).slice(0, mostPlaces);
}

/** One piece: one march through the warm-up. */
export const benchCourseJob: Job<BenchQuestion, BenchCourse | null, BenchCourse | null> = {
  count: () => 1,
  piece: benchCourse,
  gather: (_, [course]) => course ?? null,
};
