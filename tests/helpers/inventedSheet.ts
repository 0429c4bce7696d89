import { emptyTracing, type Place, type Tracing } from '../../src/model/tracing/tracing.ts';

/** A sheet of an invented fan, as it lies in a picture: 0 to 60 m³/h over 600 px, 0 to 40 Pa over 400 px, turned a little. */
export interface SheetScales {
  readonly logPressure?: boolean;
  readonly turned_rad?: number;
}

/** Where a value of the sheet lies in its picture: flow in m³/h, pressure in Pa. */
export function placeOnSheet(
  flow_m3PerH: number,
  pressure_Pa: number,
  { logPressure = false, turned_rad = 0 }: SheetScales = {},
): Place {
  const along = flow_m3PerH * 10;
  // A logarithmic sheet goes from 1 to 100 Pa.
  const up = logPressure ? 200 * Math.log10(pressure_Pa) : pressure_Pa * 10;
  const [cos, sin] = [Math.cos(turned_rad), Math.sin(turned_rad)];
  return { x: 100 + along * cos + up * sin, y: 500 + along * sin - up * cos };
}

/** Marks and points upon that sheet; points in m³/h and Pa. */
export function inventedTracing(
  points: readonly (readonly [number, number])[],
  scales: SheetScales = {},
): Tracing {
  const empty = emptyTracing('metric');
  const at = (flow: number, pressure: number) => placeOnSheet(flow, pressure, scales);
  const foot = scales.logPressure ? 1 : 0;
  const top = scales.logPressure ? 100 : 40;
  return {
    axes: {
      flow: {
        ...empty.axes.flow,
        marks: [
          { at: at(10, foot), text: '10' },
          { at: at(60, foot), text: '60 m³/h' },
        ],
      },
      pressure: {
        ...empty.axes.pressure,
        log: scales.logPressure ?? false,
        marks: [
          { at: at(0, foot), text: String(foot) },
          { at: at(0, top), text: `${top} Pa` },
        ],
      },
    },
    points: points.map(([flow, pressure]) => at(flow, pressure)),
  };
}
