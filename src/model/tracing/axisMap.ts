import type { AxisId, Place } from './tracing.ts';

/** An axis by the two places where its value is known, SI. */
export interface KnownAxis {
  readonly log: boolean;
  readonly at: readonly [Place, Place];
  /** Above zero where the axis is logarithmic. */
  readonly values: readonly [number, number];
}

export type KnownAxes = Readonly<Record<AxisId, KnownAxis>>;

/** What a place in the picture stands for. */
export interface Reading {
  readonly flow_m3PerS: number;
  readonly dp_Pa: number;
}

/** How the scales of a sheet lie in its picture. */
export interface AxisMap {
  readonly toReading: (place: Place) => Reading;
  /** `null` for a value that a logarithmic axis does not have. */
  readonly toPlace: (reading: Reading) => Place | null;
  /** By how much a reading here changes, at most, where the place is one pixel beside, SI. */
  readonly onePixel: (place: Place) => Reading;
  /** Value of the other axis along the line of each: `flow` is the pressure along the line of the flow marks. */
  readonly crossing: Readonly<Record<AxisId, number>>;
  /** By how much the sheet lies turned in the picture, clockwise, and the angle between its axes. */
  readonly turned_rad: number;
  readonly between_rad: number;
}

/** Why two axes give no map, as data; worded in the report. */
export type AxisFault =
  | { readonly code: 'marksTogether'; readonly axis: AxisId; readonly apart_px: number }
  | { readonly code: 'valuesEqual'; readonly axis: AxisId }
  | { readonly code: 'axesParallel'; readonly between_rad: number };

export type MapRead =
  | { readonly ok: true; readonly map: AxisMap }
  | { readonly ok: false; readonly fault: AxisFault };

/** Marks nearer than this make of one pixel a twentieth of all that lies between them. */
const nearest_px = 20;

/** Natural logarithm of the largest value that is told, in SI. */
const farthest = 150;

/** Values or logarithms that differ by less are one; nothing on a sheet is printed so fine, in SI. */
const finest = 1e-9;

/** Axes of a sheet stand square; a sheet pulled skew by a scanner is off by a few degrees, never by so many. */
const narrowest_rad = Math.PI / 6;

/**
 * The affine map through two marks on each axis. With u and v the values on the scales (their logarithms on a
 * logarithmic axis), a place is p = o + u·a + v·b, six unknowns. A mark tells one of its two values; the other is not
 * told, but is the same for both marks of an axis, for both lie on one line of the sheet: two unknowns more, and eight
 * equations from four places. So a = (A₂ − A₁)/(u₂ − u₁), b = (B₂ − B₁)/(v₂ − v₁), and A₁ − B₁ = (u₁ − u₀)·a + (v₀ − v₁)·b
 * gives v₀ along the flow marks and u₀ along the pressure marks. Neither line has to be that of zero, nor square to the
 * picture or to the other; what the map cannot follow is perspective, a sheet photographed from the side.
 */
export function mapAxes({ flow, pressure }: KnownAxes): MapRead {
  const fault = faultOf('flow', flow) ?? faultOf('pressure', pressure);
  if (fault !== null) return { ok: false, fault };
  const [u1, u2] = scaled(flow);
  const [v1, v2] = scaled(pressure);
  const a = times(minus(flow.at[1], flow.at[0]), 1 / (u2 - u1));
  const b = times(minus(pressure.at[1], pressure.at[0]), 1 / (v2 - v1));
  const area = cross(a, b);
  const along = lengthOf(a) * lengthOf(b);
  const between_rad = Math.acos(Math.min(1, Math.max(-1, (a.x * b.x + a.y * b.y) / along)));
  if (Math.sin(between_rad) < Math.sin(narrowest_rad))
    return { ok: false, fault: { code: 'axesParallel', between_rad } };

  const between = minus(flow.at[0], pressure.at[0]);
  const u0 = u1 - cross(between, b) / area;
  const v0 = v1 + cross(a, between) / area;
  const origin = minus(minus(flow.at[0], times(a, u1)), times(b, v0));
  const scaleOf = (place: Place) => {
    const from = minus(place, origin);
    return { u: cross(from, b) / area, v: cross(a, from) / area };
  };
  const perPixel = { u: lengthOf(b) / Math.abs(area), v: lengthOf(a) / Math.abs(area) };
  const map: AxisMap = {
    toReading: (place) => {
      const { u, v } = scaleOf(place);
      return { flow_m3PerS: valueAt(flow, u), dp_Pa: valueAt(pressure, v) };
    },
    toPlace: ({ flow_m3PerS, dp_Pa }) => {
      if ((flow.log && flow_m3PerS <= 0) || (pressure.log && dp_Pa <= 0)) return null;
      const [u, v] = [scaleValue(flow, flow_m3PerS), scaleValue(pressure, dp_Pa)];
      return { x: origin.x + u * a.x + v * b.x, y: origin.y + u * a.y + v * b.y };
    },
    onePixel: (place) => {
      const { u, v } = scaleOf(place);
      return { flow_m3PerS: stepOf(flow, u, perPixel.u), dp_Pa: stepOf(pressure, v, perPixel.v) };
    },
    crossing: { flow: valueAt(pressure, v0), pressure: valueAt(flow, u0) },
    // Along the flow axis as it is printed, whichever of its marks came first.
    turned_rad: turnOf(flow.at),
    between_rad,
  };
  return { ok: true, map };
}

function faultOf(id: AxisId, axis: KnownAxis): AxisFault | null {
  const apart_px = lengthOf(minus(axis.at[1], axis.at[0]));
  if (apart_px < nearest_px) return { code: 'marksTogether', axis: id, apart_px };
  const [low, high] = scaled(axis);
  return Math.abs(high - low) < finest ? { code: 'valuesEqual', axis: id } : null;
}

function scaled(axis: KnownAxis): readonly [number, number] {
  return [scaleValue(axis, axis.values[0]), scaleValue(axis, axis.values[1])];
}

function scaleValue({ log }: KnownAxis, value: number): number {
  return log ? Math.log(value) : value;
}

/** Far off the sheet a logarithmic scale has values that no number holds; they end where nobody reads any more. */
function valueAt({ log }: KnownAxis, scale: number): number {
  return log ? Math.exp(Math.min(farthest, Math.max(-farthest, scale))) : scale;
}

function stepOf(axis: KnownAxis, scale: number, step: number): number {
  return axis.log ? valueAt(axis, scale) * Math.expm1(Math.min(farthest, step)) : step;
}

function turnOf([first, second]: readonly [Place, Place]): number {
  const { x, y } = minus(second, first);
  return Math.atan(Math.abs(x) < 1e-12 ? (Math.sign(y) || 1) * 1e12 : y / x);
}

function minus(a: Place, b: Place): Place {
  return { x: a.x - b.x, y: a.y - b.y };
}

function times(a: Place, by: number): Place {
  return { x: a.x * by, y: a.y * by };
}

function cross(a: Place, b: Place): number {
  return a.x * b.y - a.y * b.x;
}

function lengthOf({ x, y }: Place): number {
  return Math.hypot(x, y);
}
