import type { OperatingPoint } from './findOperatingPoints.ts';

/** Where a fan settles, by where it comes from; the same point twice where the box has but one for it. */
export interface Hysteresis<P> {
  /** Started into still air: flow grows from nothing while the fan has pressure to spare, so the first stable point holds it. */
  readonly fromRest: P;
  /** Coming from an open box that is closed little by little: the stable point with most flow. */
  readonly fromFreeDelivery: P;
}

/**
 * Which of several operating points a fan reaches, as `findOperatingPoints` lists them. Two different ones: after a gust, a
 * short stop or a hand before the outlet the box may stay at the lower one.
 * @returns `null` where no point is stable
 */
export function hysteresis<P extends Pick<OperatingPoint, 'flow_m3PerS' | 'stable'>>(
  points: readonly P[],
): Hysteresis<P> | null {
  const stable = points.filter((point) => point.stable).sort((a, b) => a.flow_m3PerS - b.flow_m3PerS);
  const fromRest = stable[0];
  const fromFreeDelivery = stable[stable.length - 1];
  return fromRest && fromFreeDelivery ? { fromRest, fromFreeDelivery } : null;
}
