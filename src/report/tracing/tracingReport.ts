import { type PointRead, readTracing, type TracingRead } from '../../model/tracing/readTracing.ts';
import { tracedCurve } from '../../model/tracing/tracedCurve.ts';
import { type AxisId, axisDimension, type Place, type Tracing } from '../../model/tracing/tracing.ts';
import { dimensions, unitOf } from '../../units/dimensions.ts';
import type { UnitSystem } from '../format.ts';
import { sayReading, sayScales, short, signed, symbolOf } from './scaleWords.ts';
import { type StepSaid, stepsOf, type TracedPicture } from './tracingSteps.ts';
import { wordFault } from './tracingWords.ts';

export interface MarkSaid {
  /** "Flow mark 1". */
  readonly name: string;
  /** For who does not see it: its name, its value, or that it has none yet. */
  readonly label: string;
  readonly at: Place | null;
  readonly text: string;
  /** Of a bare number. */
  readonly unit: string;
  /** `null` while nothing is typed. */
  readonly problem: string | null;
}

export interface PointSaid {
  readonly name: string;
  /** "Point 3: 12.4 m³/h, 31 Pa". */
  readonly label: string;
  readonly at: Place;
  /** Without scales a point has no values yet. */
  readonly flow: string;
  readonly pressure: string;
  readonly problem: string | null;
}

export interface TracingReport {
  readonly steps: readonly StepSaid[];
  readonly marks: Readonly<Record<AxisId, readonly [MarkSaid, MarkSaid]>>;
  /** Why the marks give no scales; `null` where they do, or are not all there. */
  readonly fault: string | null;
  /** How the sheet lies, and what a pixel is worth. */
  readonly scales: readonly string[];
  readonly points: readonly PointSaid[];
  readonly curve: readonly Place[];
  /** What is right and worth knowing: a dip, an end above zero. */
  readonly remarks: readonly string[];
  /** Points as texts in the units of the axes; `null` while anything is wrong. */
  readonly rows: readonly (readonly [flow: string, pressure: string])[] | null;
  /** Whether the flow goes back anywhere. */
  readonly isOutOfOrder: boolean;
  /** What they are put in order by. */
  readonly flows: readonly number[];
  /** For the values of a place under the pointer. */
  readonly sayPlace: (place: Place) => string;
}

/** All that is to be said of a picture and what is laid upon it. @param list the curve it is for */
export function buildTracingReport(
  tracing: Tracing,
  picture: TracedPicture | null,
  list: string,
  system: UnitSystem,
): TracingReport {
  const read = readTracing(tracing, list, system);
  const { map, points } = read;
  const isFan = !list.endsWith('.points');
  const rows = rowsOf(points);
  return {
    steps: stepsOf(tracing, picture, read, isFan),
    marks: { flow: marksOf('flow', tracing, read), pressure: marksOf('pressure', tracing, read) },
    fault: read.fault === null ? null : wordFault(read.fault),
    scales: map === null ? [] : sayScales(map, tracing),
    points: tracing.points.map((at, index) => sayPoint(at, index, points[index], tracing)),
    curve: map === null ? [] : tracedCurve(map, points),
    remarks: isFan && rows !== null ? sayCurve(points, tracing) : [],
    rows,
    isOutOfOrder: points.some(
      ({ flow_m3PerS }, at) => at > 0 && flow_m3PerS < (points[at - 1] as PointRead).flow_m3PerS,
    ),
    flows: points.map(({ flow_m3PerS }) => flow_m3PerS),
    sayPlace: (place) => (map === null ? '' : sayReading(map, place, tracing)),
  };
}

/** Units in which an axis may be printed. */
export function unitChoices(id: AxisId): readonly { readonly value: string; readonly label: string }[] {
  return dimensions[axisDimension[id]].units.map(({ key, symbol }) => ({ value: key, label: symbol }));
}

function rowsOf(points: readonly PointRead[]): TracingReport['rows'] {
  if (points.length < 2 || points.some(({ problem }) => problem !== null)) return null;
  return points.map(({ texts: [flow, pressure] }) => [short(flow), short(pressure)] as const);
}

function marksOf(id: AxisId, { axes }: Tracing, read: TracingRead): readonly [MarkSaid, MarkSaid] {
  const axis = axes[id];
  const say = (index: 0 | 1): MarkSaid => {
    const { at, text } = axis.marks[index];
    const found = read.marks[id][index];
    const name = `${id === 'flow' ? 'Flow' : 'Pressure'} mark ${index + 1}`;
    const unit = unitOf(axisDimension[id], axis.unit).symbol;
    const value =
      text.trim() === '' ? 'no value yet' : /[\d.,]\s*$/.test(text) ? `${text.trim()} ${unit}` : text;
    const problem = found.ok || text.trim() === '' ? null : found.reason;
    return { name, label: `${name}: ${value}`, at, text, unit, problem };
  };
  return [say(0), say(1)];
}

function sayPoint(at: Place, index: number, read: PointRead | undefined, { axes }: Tracing): PointSaid {
  const name = `Point ${index + 1}`;
  if (read === undefined)
    return {
      name,
      label: `${name}: no values before both axes stand`,
      at,
      flow: '',
      pressure: '',
      problem: null,
    };
  const [flow, pressure] = [
    `${signed(read.texts[0])} ${symbolOf(axes.flow, 'flow')}`,
    `${signed(read.texts[1])} ${symbolOf(axes.pressure, 'pressure')}`,
  ];
  return { name, label: `${name}: ${flow}, ${pressure}`, at, flow, pressure, problem: read.problem };
}

/** A fan may have a dip, and a sheet may end above zero; both are told, for neither is put right. */
function sayCurve(points: readonly PointRead[], { axes }: Tracing): readonly string[] {
  const unit = symbolOf(axes.pressure, 'pressure');
  const dips: string[] = [];
  for (let low = 0; low < points.length - 1; low++) {
    let high = low;
    while ((points[high + 1]?.dp_Pa ?? Number.NEGATIVE_INFINITY) > (points[high]?.dp_Pa ?? 0)) high++;
    if (high === low) continue;
    dips.push(
      `From point ${low + 1} to point ${high + 1} the pressure rises with the flow, from ${points[low]?.texts[1]} to ${points[high]?.texts[1]} ${unit}: a dip, as many fans have. It stays.`,
    );
    low = high;
  }
  const end = points.at(-1);
  return end === undefined || end.dp_Pa <= 0
    ? dips
    : [
        ...dips,
        `The last point still has ${end.texts[1]} ${unit}; from there the curve is carried on to zero pressure.`,
      ];
}
