import type { BenchCourse } from '../../studies/bench/course.ts';
import type { CheckedReading } from '../../studies/bench/types.ts';
import { saidDuration } from '../durations.ts';
import { amount, unitOf } from '../format.ts';
import type { Line, LineChart, LineStyle, Mark } from '../lineChart.ts';
import { table } from '../makeTable.ts';
import type { TextTable, UnitSystem } from '../types.ts';
import { capital, counted, roundTicks } from '../words.ts';
import { conditionWords, placeWords, saidDifference, saidReading } from './benchWords.ts';

const styles: readonly LineStyle[] = ['solid', 'dashed', 'dotted', 'dashDot'];

/** The computed warm-up, with the readings taken of it as dots. */
export interface WarmUp {
  readonly chart: LineChart;
  readonly table: TextTable;
}

/** @param course of the same readings; `null` where no warm-up was read */
export function warmUpOf(
  course: BenchCourse | null,
  readings: readonly CheckedReading[],
  system: UnitSystem,
): WarmUp | null {
  if (course === null) return null;
  const { conditions, lines } = course;
  const taken = lines
    .flatMap((line) => line.readings.flatMap((index) => readings[index] ?? []))
    .sort((a, b) => (a.time_s ?? 0) - (b.time_s ?? 0));
  const show = (T_K: number) => amount(T_K, 'temperature', system);
  const shown = lines.map(
    (line, at): Line => ({
      key: placeWords(line),
      label: placeWords(line),
      style: styles[at] ?? 'solid',
      points: line.points.map(({ time_s, T_K }) => ({ x: time_s / 60, y: T_K === null ? null : show(T_K) })),
    }),
  );
  const marks = taken.map((each): Mark => ({ label: '', x: (each.time_s ?? 0) / 60, y: show(each.value) }));
  const values = [
    ...shown.flatMap(({ points }) => points.flatMap(({ y }) => y ?? [])),
    ...marks.map(({ y }) => y),
  ];
  const caption = `Warm-up at ${conditionWords(conditions, system)}`;
  const chart: LineChart = {
    id: 'benchWarmUp',
    caption: `${caption}: computed, and the readings as dots`,
    xLabel: 'after load and fan were switched on',
    xUnit: 'min',
    yUnit: unitOf('temperature', system),
    lines: shown,
    levels: [],
    marks,
    xTicks: roundTicks(0, Math.max(...marks.map(({ x }) => x))),
    yTicks: roundTicks(Math.min(...values), Math.max(...values)),
    spoken: `Computed temperatures over the warm-up of ${counted(lines.length, 'place')}, with ${counted(marks.length, 'reading')} as dots.`,
  };
  return { chart, table: warmUpTable(caption, taken, system) };
}

function warmUpTable(caption: string, readings: readonly CheckedReading[], system: UnitSystem): TextTable {
  return table(
    'benchWarmUp',
    caption,
    ['>After', 'Where', '>Measured', '>Computed', '>Off'],
    readings.map((reading) => [
      saidDuration(reading.time_s ?? 0),
      capital(placeWords(reading)),
      saidReading(reading.kind, reading.value, system),
      saidReading(reading.kind, reading.computed, system),
      saidDifference(reading.kind, reading.deviation, system),
    ]),
  );
}
