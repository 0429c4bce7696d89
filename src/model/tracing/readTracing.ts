import { unitOf } from '../../units/dimensions.ts';
import { fromSI, toSI } from '../../units/unit.ts';
import { accepts } from '../accepts.ts';
import { checkFanCurve, checkLossPoints } from '../checkCurves.ts';
import { fieldAt } from '../fields.ts';
import type { Path } from '../path.ts';
import type { UnitSystem } from '../say.ts';
import { allowed } from '../wordIssue.ts';
import { wordProblem } from '../wordProblem.ts';
import { type AxisFault, type AxisMap, type KnownAxes, mapAxes, type Reading } from './axisMap.ts';
import {
  type Axis,
  type AxisId,
  axisDimension,
  type MarkRead,
  type Place,
  readMark,
  type Tracing,
} from './tracing.ts';

export interface PointRead extends Reading {
  /** Both as bare numbers in the units of their axes, with the decimals that a pixel is worth. */
  readonly texts: readonly [flow: string, pressure: string];
  /** What is wrong with it beside the others, and what is allowed. */
  readonly problem: string | null;
}

export interface TracingRead {
  readonly marks: Readonly<Record<AxisId, readonly [MarkRead, MarkRead]>>;
  /** `null` while a mark is missing or does not read, or where the axes give no map. */
  readonly map: AxisMap | null;
  readonly fault: AxisFault | null;
  readonly points: readonly PointRead[];
}

/** A place not further than this beside the line of zero is on it: nobody hits a line of the sheet any better. */
const onTheLine_px = 1.5;

/** What the marks and points of a tracing say. @param list the curve they are for: `fan.curve`, `extras[0].points` */
export function readTracing(tracing: Tracing, list: Path, system: UnitSystem): TracingRead {
  const { flow, pressure } = tracing.axes;
  const read = (axis: Axis, id: AxisId) =>
    [readMark(axis, id, 0, system), readMark(axis, id, 1, system)] as const;
  const marks = { flow: read(flow, 'flow'), pressure: read(pressure, 'pressure') };
  const known = knownAxes(tracing, marks);
  const mapped = known === null ? null : mapAxes(known);
  if (mapped === null || !mapped.ok) return { marks, map: null, fault: mapped?.fault ?? null, points: [] };
  const { map } = mapped;
  const values = tracing.points.map((place) => readPoint(map, place, tracing));
  return { marks, map, fault: null, points: judged(values, list, tracing, system) };
}

function knownAxes(
  { axes }: Tracing,
  marks: Readonly<Record<AxisId, readonly [MarkRead, MarkRead]>>,
): KnownAxes | null {
  const know = (id: AxisId) => {
    const [first, second] = axes[id].marks;
    const [one, two] = marks[id];
    if (first.at === null || second.at === null || !one.ok || !two.ok) return null;
    return { log: axes[id].log, at: [first.at, second.at], values: [one.value, two.value] } as const;
  };
  const [flow, pressure] = [know('flow'), know('pressure')];
  return flow === null || pressure === null ? null : { flow, pressure };
}

/** Values of a place, rounded to the digit that a pixel is worth there, and to zero on the line of zero. */
function readPoint(map: AxisMap, place: Place, { axes }: Tracing): Omit<PointRead, 'problem'> {
  const exact = map.toReading(place);
  const pixel = map.onePixel(place);
  const flow = rounded(exact.flow_m3PerS, pixel.flow_m3PerS, axes.flow, 'flow');
  const pressure = rounded(exact.dp_Pa, pixel.dp_Pa, axes.pressure, 'pressure');
  return { flow_m3PerS: flow.value, dp_Pa: pressure.value, texts: [flow.text, pressure.text] };
}

/** A value and its text in the unit of its axis, down to the digit that a pixel is worth; zero on the line of zero. */
export function rounded(value: number, pixel: number, axis: Axis, id: AxisId) {
  const isZero = !axis.log && Math.abs(value) <= onTheLine_px * pixel;
  const unit = unitOf(axisDimension[id], axis.unit);
  const amount = isZero ? 0 : fromSI(value, unit);
  const text = amount.toFixed(decimalsOf(fromSI(pixel, unit))).replace(/^-(?=[0.]+$)/, '');
  return { value: Number(toSI(Number(text), unit).toPrecision(15)), text };
}

/** Decimals down to the first digit that a pixel of this size does not blur; the last bit of a tenth decides nothing. */
function decimalsOf(pixel: number): number {
  return Math.min(12, Math.max(0, Math.floor(1e-6 - Math.log10(pixel)) + 1));
}

function judged(
  values: readonly Omit<PointRead, 'problem'>[],
  list: Path,
  { axes }: Tracing,
  system: UnitSystem,
): readonly PointRead[] {
  const check = list.endsWith('.points') ? checkLossPoints : checkFanCurve;
  const clashes = check(list, values);
  return values.map((value, row) => {
    const place = `${list}[${row}].`;
    const clash = clashes.find(({ path }) => path.startsWith(place));
    const outside =
      outOfBounds(`${place}flow_m3PerS`, value.flow_m3PerS, axes.flow.unit, system) ??
      outOfBounds(`${place}dp_Pa`, value.dp_Pa, axes.pressure.unit, system);
    return { ...value, problem: outside ?? (clash === undefined ? null : wordProblem(clash, system)) };
  });
}

function outOfBounds(path: Path, value: number, unit: string, system: UnitSystem): string | null {
  const field = fieldAt(path);
  if (accepts(path, value)) return null;
  return `${field.label} is out of bounds. ${allowed(path, system, unit)}`;
}
