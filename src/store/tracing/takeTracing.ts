import type { AxisId } from '../../model/tracing/tracing.ts';
import { pastePoints } from '../paste/pastePoints.ts';
import type { Entered } from '../state.ts';
import { rememberUnit } from '../unitTyped.ts';

/** The traced points in place of those of a curve, in the units of the sheet. @returns why not, in a string */
export function takeTracing(
  state: Entered,
  list: string,
  rows: readonly (readonly [string, string])[],
  units: Readonly<Record<AxisId, string>>,
): Partial<Entered> | string {
  const flows = rememberUnit(state.units, `${list}[0].flow_m3PerS`, units.flow);
  const both = rememberUnit(flows, `${list}[0].dp_Pa`, units.pressure);
  return pastePoints({ ...state, units: both }, list, rows);
}
