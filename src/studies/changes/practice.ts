import type { Design } from '../../model/design.ts';

/** What a small workshop keeps to; common practice, no source. */

/** The narrowest gap that a saw or a mill leaves between two parts on purpose. */
const tightestGap_m = 2e-4;
/** Slots of a drawn profile are at most so many times as deep as they are wide. */
export const profileReach = 6;
/** Spacer line is hardly sold thinner. */
export const thinnestLine_m = 1e-4;
/** Thinner fins bend under the mill. */
export const thinnestFin_m = 4e-4;
/** Bars of so much open area still stop a finger. */
export const openestGuard = 0.9;

/** A clearance cannot be cut closer than the parts scatter: the fit allowance counts at both sides. */
export function tightest_m({ cutting }: Design): number {
  return Math.max(tightestGap_m, 2 * cutting.fit_m);
}

/** To a step that somebody would write down, without the dust behind the last digit of a binary number. */
export function rounded(value: number, step: number): number {
  return Number((Math.round(value / step) * step).toPrecision(12));
}
