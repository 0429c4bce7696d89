import type { FanCurve } from './fanCurve.ts';
import { fanPressure } from './fanPressure.ts';

/**
 * Static pressure of equal fans together and its derivative by their common flow, to `out[0]` and `out[1]`: side by side they
 * share the flow at one pressure, behind one another they add their pressures at one flow. Ideal: a fan close behind another
 * works in its swirl and adds less.
 */
export function fanGroupPressure(
  fan: FanCurve,
  group: { readonly sideBySide: number; readonly inARow: number },
  flow_m3PerS: number,
  speedRatio: number,
  rho_kgPerM3: number,
  out: Float64Array,
): void {
  fanPressure(fan, flow_m3PerS / group.sideBySide, speedRatio, rho_kgPerM3, out);
  out[0] = (out[0] as number) * group.inARow;
  out[1] = ((out[1] as number) * group.inARow) / group.sideBySide;
}
