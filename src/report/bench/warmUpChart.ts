import { evaluatePchip, preparePchip } from '../../core/solve/pchip.ts';
import type { CheckedReading } from '../../studies/bench/types.ts';
import { amount, unitOf } from '../format.ts';
import type { Line, LineChart, LineStyle, Mark } from '../lineChart.ts';
import type { UnitSystem } from '../types.ts';
import { counted, roundTicks } from '../words.ts';
import { conditionWords, placeWords } from './benchWords.ts';

const styles: readonly LineStyle[] = ['solid', 'dashed', 'dotted', 'dashDot'];
/** As many places as dashes tell apart. */
const mostPlaces = styles.length;
const samples = 60;

interface Timed extends CheckedReading {
  readonly time_s: number;
  readonly computed: number;
}

/**
 * The warm-up that most timed readings belong to: what is computed, from the room's temperature on, and the readings as
 * dots. Between the moments of the readings the course is interpolated.
 * @returns `null` where no two readings were taken of one warm-up
 */
export function warmUpChart(readings: readonly CheckedReading[], system: UnitSystem): LineChart | null {
  const runs = groupsOf(readings.filter(isTimed), (reading) =>
    [reading.load_W, reading.room_K, reading.fan_V].join(' '),
  );
  const run = runs.sort((a, b) => b.length - a.length)[0];
  const first = run?.[0];
  if (run === undefined || first === undefined || run.length < 2) return null;
  const places = groupsOf(run, placeWords)
    .sort((a, b) => b.length - a.length)
    .slice(0, mostPlaces);
  const shown = places.flat();
  const show = (T_K: number) => amount(T_K, 'temperature', system);
  const end_s = Math.max(...shown.map(({ time_s }) => time_s));
  const values = shown.flatMap(({ value, computed }) => [show(value), show(computed)]);
  return {
    id: 'benchWarmUp',
    caption: `Warm-up at ${conditionWords({ ...first, time_s: null }, system)}: computed, and the readings as dots`,
    xLabel: 'after load and fan were switched on',
    xUnit: 'min',
    yUnit: unitOf('temperature', system),
    lines: places.map((place, at) => courseOf(place, styles[at] ?? 'solid', show)),
    levels: [],
    marks: shown.map((reading): Mark => ({ label: '', x: reading.time_s / 60, y: show(reading.value) })),
    xTicks: roundTicks(0, end_s / 60),
    yTicks: roundTicks(Math.min(show(first.room_K), ...values), Math.max(...values)),
    spoken: `Computed temperatures over the warm-up of ${counted(places.length, 'place')}, with ${counted(shown.length, 'reading')} as dots.`,
  };
}

function isTimed(reading: CheckedReading): reading is Timed {
  return (
    reading.kind === 'temperature' &&
    reading.time_s !== null &&
    reading.time_s > 0 &&
    reading.computed !== null
  );
}

/** Everything starts as warm as the room. */
function courseOf(place: readonly Timed[], style: LineStyle, show: (T_K: number) => number): Line {
  const [first] = place as [Timed];
  const byTime = new Map([
    [0, first.room_K],
    ...place.map((each): [number, number] => [each.time_s, each.computed]),
  ]);
  const times = [...byTime.keys()].sort((a, b) => a - b);
  const end_s = times.at(-1) ?? 0;
  const curve = preparePchip(
    times,
    times.map((time_s) => byTime.get(time_s) ?? first.room_K),
  );
  const pair = new Float64Array(2);
  const label = placeWords(first);
  return {
    key: label,
    label,
    style,
    points: Array.from({ length: samples + 1 }, (_, i) => {
      const time_s = (end_s * i) / samples;
      evaluatePchip(curve, time_s, pair);
      return { x: time_s / 60, y: show(pair[0] ?? first.room_K) };
    }),
  };
}

function groupsOf<T>(items: readonly T[], keyOf: (item: T) => string): T[][] {
  const groups = new Map<string, T[]>();
  for (const item of items) groups.set(keyOf(item), [...(groups.get(keyOf(item)) ?? []), item]);
  return [...groups.values()];
}
