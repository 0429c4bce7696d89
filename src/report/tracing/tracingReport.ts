import type { AxisMap, Reading } from '../../model/tracing/axisMap.ts';
import { type PointRead, readTracing, rounded, type TracingRead } from '../../model/tracing/readTracing.ts';
import { tracedCurve } from '../../model/tracing/tracedCurve.ts';
import {
  type Axis,
  type AxisId,
  axisDimension,
  axisIds,
  type Place,
  type Tracing,
} from '../../model/tracing/tracing.ts';
import { dimensions, unitOf } from '../../units/dimensions.ts';
import { plain, type UnitSystem } from '../format.ts';
import { axisNames, degrees, wordAxisStep, wordFault } from './tracingWords.ts';

export const stepIds = ['picture', 'flow', 'pressure', 'points', 'take'] as const;

export type StepId = (typeof stepIds)[number];

export interface StepSaid {
  readonly id: StepId;
  readonly title: string;
  readonly isDone: boolean;
  /** What to do now. */
  readonly sentence: string;
}

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

export interface TracedPicture {
  readonly name: string;
  readonly width: number;
  readonly height: number;
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

function stepsOf(
  { axes, points }: Tracing,
  picture: TracedPicture | null,
  read: TracingRead,
  isFan: boolean,
): readonly StepSaid[] {
  const axisStep = (id: AxisId): StepSaid => {
    const standing = axes[id].marks.filter(({ at }) => at !== null).length;
    const isRead = read.marks[id].every(({ ok }) => ok);
    return {
      id,
      title: id === 'flow' ? 'Flow axis' : 'Pressure axis',
      isDone: standing === 2 && isRead,
      sentence: wordAxisStep(id, standing, isRead),
    };
  };
  const wrong = read.points.filter(({ problem }) => problem !== null).length;
  const areRight = read.points.length >= 2 && wrong === 0;
  const curve = isFan ? 'the fan’s curve' : 'the measured points of this loss';
  return [
    {
      id: 'picture',
      title: 'Picture',
      isDone: picture !== null,
      sentence:
        picture === null
          ? 'Choose the picture of a data sheet, drop it here, or paste it from the clipboard.'
          : `“${picture.name}”, ${picture.width} × ${picture.height} pixels. Go on with the flow axis, or take another picture.`,
    },
    axisStep('flow'),
    axisStep('pressure'),
    { id: 'points', title: 'Points', isDone: areRight, sentence: sayPointStep(read, points.length, isFan) },
    {
      id: 'take',
      title: 'Take it over',
      isDone: false,
      sentence: areRight
        ? `${points.length} points become ${curve}, in place of those that stand there. Say which sheet they come from.`
        : wrong > 0
          ? `${wrong === 1 ? 'One point is' : `${wrong} points are`} not right yet; what is wrong stands beside.`
          : `Both axes and at least two points are needed before they can become ${curve}.`,
    },
  ];
}

function sayPointStep({ map }: TracingRead, count: number, isFan: boolean): string {
  if (map === null) return 'Points may be put now; they get their values when both axes stand.';
  if (count === 0)
    return isFan
      ? 'Press along the curve, from shut-off on the left to free delivery on the right; closer together where it bends.'
      : 'Press along the curve, from little flow to much; closer together where it bends.';
  return 'A new point goes after the chosen one. Drag a point, nudge it by arrow key, take it away by Delete.';
}

function sayScales(map: AxisMap, { axes }: Tracing): readonly string[] {
  const at: Place = middleOf(axes.flow, axes.pressure);
  const pixel = map.onePixel(at);
  const reading = map.toReading(at);
  const worth = (id: AxisId, step: number, value: number) =>
    axes[id].log
      ? `${plain((100 * step) / value, 2)} % of the ${id}`
      : `${plain(inUnit(step, axes[id], id), 2)} ${symbolOf(axes[id], id)}`;
  const line = (id: AxisId, other: AxisId, step: number) => {
    const { text } = rounded(map.crossing[id], step, axes[other], other);
    return `the ${axisNames[id]} lies at ${signed(short(text))} ${symbolOf(axes[other], other)}`;
  };
  const lies = `${line('flow', 'pressure', map.onePixel(axes.flow.marks[0].at ?? at).dp_Pa)}, ${line('pressure', 'flow', map.onePixel(axes.pressure.marks[0].at ?? at).flow_m3PerS)}`;
  const skew_rad = Math.abs(map.between_rad - Math.PI / 2);
  return [
    `One pixel is ${worth('flow', pixel.flow_m3PerS, reading.flow_m3PerS)} and ${worth('pressure', pixel.dp_Pa, reading.dp_Pa)}.`,
    `By the marks ${lies}.`,
    ...(Math.abs(map.turned_rad) > noticed_rad
      ? [`The sheet lies turned by ${degrees(Math.abs(map.turned_rad))}, and is read so.`]
      : []),
    ...(skew_rad > noticed_rad
      ? [
          `Its axes stand at ${degrees(map.between_rad)} to each other, not square: true of a sheet pulled skew, or a mark is beside its line.`,
        ]
      : []),
  ];
}

/** Half a degree: less is how well a mark is put. */
const noticed_rad = Math.PI / 360;

function middleOf(flow: Axis, pressure: Axis): Place {
  const places = [...flow.marks, ...pressure.marks].flatMap(({ at }) => at ?? []);
  const mean = (of: (place: Place) => number) =>
    places.reduce((sum, place) => sum + of(place), 0) / Math.max(1, places.length);
  return { x: mean(({ x }) => x), y: mean(({ y }) => y) };
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

function sayReading(map: AxisMap, place: Place, { axes }: Tracing): string {
  const [value, pixel] = [map.toReading(place), map.onePixel(place)];
  const say = (id: AxisId, of: (reading: Reading) => number) =>
    `${signed(rounded(of(value), of(pixel), axes[id], id).text)} ${symbolOf(axes[id], id)}`;
  return axisIds
    .map((id) => say(id, id === 'flow' ? ({ flow_m3PerS }) => flow_m3PerS : ({ dp_Pa }) => dp_Pa))
    .join(', ');
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

function symbolOf({ unit }: Axis, id: AxisId): string {
  return unitOf(axisDimension[id], unit).symbol;
}

function inUnit(value: number, { unit }: Axis, id: AxisId): number {
  const { factor, divisor } = unitOf(axisDimension[id], unit);
  return (value * divisor) / factor;
}

/** Nobody types zeros that say nothing. */
function short(text: string): string {
  return String(Number(text));
}

function signed(text: string): string {
  return text.replace(/^-/, '−');
}
