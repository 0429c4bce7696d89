import type { AxisId, Place, Tracing } from '../../model/tracing/tracing.ts';

/** One thing laid upon the picture. */
export type Target =
  | { readonly kind: 'mark'; readonly axis: AxisId; readonly index: 0 | 1 }
  | { readonly kind: 'point'; readonly index: number };

/** Where something lies; `null` while it is not put. */
export function placeOf({ axes, points }: Tracing, target: Target): Place | null {
  return target.kind === 'point' ? (points[target.index] ?? null) : axes[target.axis].marks[target.index].at;
}

export function isSame(a: Target | null, b: Target): boolean {
  return a !== null && nameOf(a) === nameOf(b);
}

export function nameOf(target: Target): string {
  return target.kind === 'point' ? `point-${target.index}` : `${target.axis}-${target.index}`;
}
