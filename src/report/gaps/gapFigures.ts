import { fieldAt } from '../../model/fields.ts';
import { gapPath, presentGap_m } from '../../studies/gaps/gap.ts';
import type { GapLine, GapQuestion } from '../../studies/gaps/gapLine.ts';
import type { Outputs } from '../../studies/outputs.ts';
import { amount, type Dimension, quantity, unitOf } from '../format.ts';
import type { LineChart } from '../lineChart.ts';
import type { UnitSystem } from '../types.ts';
import { percent, roundTicks, times } from '../words.ts';
import { gapSize } from './gapWords.ts';

interface Followed {
  readonly key: keyof Outputs;
  readonly label: string;
  readonly dimension: Dimension;
  /** Less height than this on the axis would make much of nothing. */
  readonly leastSpan: number;
  readonly fromNil: boolean;
}

/** What besides the film follows from a gap. */
const followed: readonly Followed[] = [
  { key: 'finShare', label: 'Share through fins', dimension: 'ratio', leastSpan: 0.1, fromNil: true },
  { key: 'flow_m3PerS', label: 'Air moved', dimension: 'volumeFlow', leastSpan: 1e-4, fromNil: true },
  { key: 'fanPressure_Pa', label: 'Fan pressure', dimension: 'pressure', leastSpan: 1, fromNil: true },
  { key: 'sound_dBA', label: 'Sound at the listener', dimension: 'soundLevel', leastSpan: 4, fromNil: false },
  { key: 'loadFactor', label: 'Load up to', dimension: 'number', leastSpan: 0.2, fromNil: false },
];

/** One chart of each, the present value marked and the level without a baffle drawn. */
export function gapFigures(question: GapQuestion, line: GapLine, system: UnitSystem): LineChart[] {
  return line.coolest === null ? [] : followed.map((each) => figureOf(each, question, line, system));
}

function figureOf(
  { key, label, dimension, leastSpan, fromNil }: Followed,
  { design, gap }: GapQuestion,
  { points, present, none }: GapLine,
  system: UnitSystem,
): LineChart {
  const x = (at_m: number) => amount(at_m, 'length', system);
  const y = (value: number) => amount(value, dimension, system);
  const values = points.flatMap(({ trial }) => (trial.ok ? [trial.outputs[key]] : []));
  const without = none.ok ? none.outputs[key] : null;
  const all = [...values, ...(without === null ? [] : [without])];
  const middle = (Math.min(...all) + Math.max(...all)) / 2;
  const low = fromNil ? 0 : Math.min(...all, middle - leastSpan / 2);
  const high = Math.max(...all, middle + leastSpan / 2);
  const present_m = presentGap_m(design, gap);
  const isPercent = dimension === 'ratio';
  const said = (value: number) => sayValue(value, dimension, system);
  return {
    id: `gap-${key}`,
    caption: label,
    xLabel: fieldAt(gapPath(gap)).label.toLowerCase(),
    xUnit: unitOf('length', system),
    yUnit: dimension === 'number' ? '×' : unitOf(dimension, system),
    lines: [
      {
        key,
        label: '',
        style: 'solid',
        points: points.map(({ at_m, trial }) => ({
          x: x(at_m),
          y: trial.ok ? y(trial.outputs[key]) : null,
        })),
      },
    ],
    levels:
      without === null ? [] : [{ label: `no baffle, ${said(without)}`, y: y(without), style: 'dashed' }],
    marks:
      present_m !== null && present?.ok
        ? [{ label: said(present.outputs[key]), x: x(present_m), y: y(present.outputs[key]) }]
        : [],
    xTicks: roundTicks(x(points[0]?.at_m ?? 0), x(points.at(-1)?.at_m ?? 1)),
    yTicks: roundTicks(y(low), y(isPercent ? Math.min(1, high) : high)),
    spoken: `${label}: ${said(values[0] ?? 0)} at ${gapSize(points[0]?.at_m ?? 0, system)}, ${said(values.at(-1) ?? 0)} at ${gapSize(points.at(-1)?.at_m ?? 0, system)}.`,
  };
}

function sayValue(value: number, dimension: Dimension, system: UnitSystem): string {
  if (dimension === 'ratio') return percent(value);
  if (dimension === 'number') return times(value);
  return quantity(value, dimension, system, 3);
}
