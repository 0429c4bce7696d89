import type { FanCurve } from './fanCurve.ts';

export interface FlowZone {
  readonly from_m3PerS: number;
  readonly to_m3PerS: number;
}

/**
 * Stretches of a curve over which more flow comes with more pressure, from a local lowest to the next local highest point, at
 * rated speed. Between its points the curve is monotone, so the points alone tell. A box that meets the fan in there or to
 * the left of it runs with stalled blades: noisy, and unsteady where the box's own curve is the flatter one.
 */
export function stallZones({ curve: { x, y } }: FanCurve): FlowZone[] {
  const zones: FlowZone[] = [];
  let from: number | null = null;
  for (let i = 1; i < x.length; i++) {
    const rises = (y[i] as number) > (y[i - 1] as number);
    if (rises && from === null) from = x[i - 1] as number;
    if (!rises && from !== null) {
      zones.push({ from_m3PerS: from, to_m3PerS: x[i - 1] as number });
      from = null;
    }
  }
  if (from !== null) zones.push({ from_m3PerS: from, to_m3PerS: x[x.length - 1] as number });
  return zones;
}
