import type { AxisMap, Reading } from '../../model/tracing/axisMap.ts';
import { rounded } from '../../model/tracing/readTracing.ts';
import {
  type Axis,
  type AxisId,
  axisDimension,
  axisIds,
  type Place,
  type Tracing,
} from '../../model/tracing/tracing.ts';
import { unitOf } from '../../units/dimensions.ts';
import { fromSI } from '../../units/unit.ts';
import { plain } from '../format.ts';
import { axisNames, degrees } from './tracingWords.ts';

/** How the sheet lies in its picture, and what a pixel of it is worth. */
export function sayScales(map: AxisMap, { axes }: Tracing): readonly string[] {
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

/** Flow and pressure of a place, to the digit that a pixel is worth. */
export function sayReading(map: AxisMap, place: Place, { axes }: Tracing): string {
  const [value, pixel] = [map.toReading(place), map.onePixel(place)];
  const say = (id: AxisId, of: (reading: Reading) => number) =>
    `${signed(rounded(of(value), of(pixel), axes[id], id).text)} ${symbolOf(axes[id], id)}`;
  return axisIds
    .map((id) => say(id, id === 'flow' ? ({ flow_m3PerS }) => flow_m3PerS : ({ dp_Pa }) => dp_Pa))
    .join(', ');
}

/** Symbol of the unit of an axis. */
export function symbolOf({ unit }: Axis, id: AxisId): string {
  return unitOf(axisDimension[id], unit).symbol;
}

function inUnit(value: number, { unit }: Axis, id: AxisId): number {
  return fromSI(value, unitOf(axisDimension[id], unit));
}

/** Nobody types zeros that say nothing. */
export function short(text: string): string {
  return String(Number(text));
}

/** With a true minus. */
export function signed(text: string): string {
  return text.replace(/^-/, '−');
}
