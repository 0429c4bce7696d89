import { checkDesign } from '../../model/check.ts';
import type { Design } from '../../model/design.ts';
import { fieldAt, type QuantityField } from '../../model/fields.ts';
import { getAt, type Path } from '../../model/path.ts';
import { spreadsOf } from '../../model/spreads/spreads.ts';
import { niceStep } from '../../units/niceStep.ts';
import { withValues } from '../vary.ts';

/** Gaps of the baffle that a maker may cut one way or another: the last keys of their places. */
export const gapKeys = [
  'sideClearance_m',
  'slotWidth_m',
  'endClearance_m',
  'leakGap_m',
  'standOff_m',
] as const;

export type GapKey = (typeof gapKeys)[number];

export function gapPath(gap: GapKey): Path {
  return `baffle.${gap}`;
}

/** Values that put a gap into a design. */
export type GapValues = Readonly<Record<Path, number | boolean>>;

/** The design with a baffle cut so, or (`null`) without one. */
export function gapValues(gap: GapKey, at_m: number | null): GapValues {
  return at_m === null ? withoutBaffle : { 'baffle.fitted': true, [gapPath(gap)]: at_m };
}

const withoutBaffle: GapValues = { 'baffle.fitted': false };

/** What the design has now; `null` without a baffle. */
export function presentGap_m({ baffle }: Design, gap: GapKey): number | null {
  return baffle.fitted ? baffle[gap] : null;
}

/** How far a cut of this gap may be off either way in nearly all boxes, as the design's spreads say. */
export function usualCut_m(design: Design, gap: GapKey): number {
  const spread = spreadsOf(design).find(({ path }) => path === gapPath(gap));
  if (spread === undefined || spread.kind === 'none') return 0;
  const size_m = spread.relative ? spread.size * design.baffle[gap] : spread.size;
  return spread.kind === 'normal' || spread.kind === 'lognormal' ? 2 * size_m : size_m;
}

/** Least and most that can be built while everything else stays as it is. */
export interface Room {
  readonly least_m: number;
  readonly most_m: number;
}

export function gapRoom(design: Design, gap: GapKey): Room {
  const [least_m, hard_m] = bounds(gap).hard;
  const widest = withValues(design, gapValues(gap, hard_m));
  const clash = checkDesign(widest).find(({ path }) => path === gapPath(gap));
  const most_m = clash === undefined ? hard_m : Number(getAt(clash.data, 'most_m') ?? hard_m);
  return { least_m, most_m: Math.max(least_m, most_m) };
}

function bounds(gap: GapKey): QuantityField {
  return fieldAt(gapPath(gap)) as QuantityField;
}

/** A range in even steps. */
export interface Steps {
  readonly from_m: number;
  readonly to_m: number;
  readonly step_m: number;
}

/**
 * From tight to loose around what the design has, in round steps, inside what can be built. A slot goes from a fifth of
 * itself to twice as wide; a clearance begins at nothing and goes to five times itself, or to where loose begins.
 * @param unit_m in which the steps shall be round: 0.001 for millimetres, 0.0254 for inches
 */
export function usualSteps(design: Design, gap: GapKey, unit_m = 0.001): Steps {
  const room = gapRoom(design, gap);
  const [least_m, most_m] = [short(room.least_m, Math.ceil, unit_m), short(room.most_m, Math.floor, unit_m)];
  const here_m = design.baffle[gap];
  const usual_m = bounds(gap).usual?.[1] ?? here_m;
  const isOpening = room.least_m > 0;
  const low_m = isOpening ? here_m / 5 : 0;
  const high_m = Math.min(most_m, isOpening ? 2 * here_m : Math.max(5 * here_m, 0.5 * usual_m));
  const step_m = niceStep(Math.max(high_m - low_m, 1e-6) / unit_m / 8) * unit_m;
  const whole = (value_m: number, round: (steps: number) => number) =>
    Number((round(value_m / step_m) * step_m).toPrecision(12));
  const from_m = Math.max(least_m, whole(low_m, Math.floor), isOpening ? step_m : 0);
  const to_m = Math.min(
    most_m,
    whole(high_m, (steps) => Math.ceil(steps - 1e-9)),
  );
  return { from_m: Math.min(from_m, to_m), to_m, step_m: Number(step_m.toPrecision(12)) };
}

/** With five digits in its unit, as somebody might type it, and inside what it bounds. */
function short(value_m: number, round: (value: number) => number, unit_m: number): number {
  if (value_m <= 0) return 0;
  const digit_m = 10 ** (Math.floor(Math.log10(value_m / unit_m)) - 4) * unit_m;
  const digits = value_m / digit_m;
  // A value that is short but for the last bit of a binary number stays as it is.
  const whole = Math.abs(digits - Math.round(digits)) < 1e-9 * digits ? Math.round(digits) : round(digits);
  return Number((whole * digit_m).toPrecision(12));
}

/** Every step of a range, its end included. */
export function stepValues_m({ from_m, to_m, step_m }: Steps): number[] {
  const count = Math.floor((to_m - from_m) / step_m + 1e-9) + 1;
  const even = Array.from({ length: count }, (_, i) => Number((from_m + i * step_m).toPrecision(12)));
  return to_m - (even.at(-1) ?? to_m) > 1e-9 ? [...even, to_m] : even;
}
