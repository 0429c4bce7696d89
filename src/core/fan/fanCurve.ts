import { type Pchip, preparePchip } from '../solve/pchip.ts';

/** Density that fan curves are quoted at, by convention of fan testing. */
export const curveDensity_kgPerM3 = 1.2;

export interface FanPoint {
  readonly flow_m3PerS: number;
  readonly dp_Pa: number;
}

/** A fan's static pressure over flow at rated speed and 1.2 kg/m³, monotone between its points. */
export interface FanCurve {
  readonly curve: Pchip;
  readonly freeFlow_m3PerS: number;
  readonly shutOff_Pa: number;
  /** Whether more flow never comes with more pressure: then a box meets the fan once. */
  readonly isNonIncreasing: boolean;
  /** Flow up to which the curve has a dip: the last place where pressure rises with flow ends here. */
  readonly stallBelow_m3PerS: number | null;
}

/**
 * A curve whose last point still has pressure is closed with its last chord (or its mean fall, where that is steeper), so
 * that every fan has a free delivery.
 * @param points at least two, flow rising (`fanCurveProblem` tells what else would be wrong)
 */
export function prepareFanCurve(points: readonly FanPoint[]): FanCurve {
  const closed = closeCurve(points);
  return fanCurveOf(
    preparePchip(
      closed.map((p) => p.flow_m3PerS),
      closed.map((p) => p.dp_Pa),
    ),
  );
}

/** What is to be known of a curve that ends at its free delivery. */
export function fanCurveOf(curve: Pchip): FanCurve {
  const { x, y } = curve;
  let stallBelow_m3PerS: number | null = null;
  for (let i = 1; i < x.length; i++)
    if ((y[i] as number) > (y[i - 1] as number)) stallBelow_m3PerS = x[i] as number;
  return {
    curve,
    freeFlow_m3PerS: x[x.length - 1] as number,
    shutOff_Pa: y[0] as number,
    isNonIncreasing: stallBelow_m3PerS === null,
    stallBelow_m3PerS,
  };
}

function closeCurve(points: readonly FanPoint[]): readonly FanPoint[] {
  const first = points[0] as FanPoint;
  const before = points[points.length - 2] as FanPoint;
  const last = points[points.length - 1] as FanPoint;
  if (last.dp_Pa <= 0) return points;
  const chord = (before.dp_Pa - last.dp_Pa) / (last.flow_m3PerS - before.flow_m3PerS);
  const mean = (first.dp_Pa - last.dp_Pa) / (last.flow_m3PerS - first.flow_m3PerS);
  const fall = Math.max(chord, mean, (0.1 * last.dp_Pa) / last.flow_m3PerS);
  return [...points, { flow_m3PerS: last.flow_m3PerS + last.dp_Pa / fall, dp_Pa: 0 }];
}

export type FanCurveProblem =
  | { readonly code: 'tooFewPoints'; readonly count: number }
  | { readonly code: 'negative'; readonly index: number }
  | { readonly code: 'flowNotRising'; readonly index: number }
  | { readonly code: 'flowTwice'; readonly index: number }
  | { readonly code: 'risesAtEnd'; readonly index: number }
  | { readonly code: 'endsAboveStart'; readonly index: number }
  | { readonly code: 'noPressure'; readonly index: number };

/** First thing wrong with a table of points, or `null`. Told, never mended: the maker knows what the sheet says. */
export function fanCurveProblem(points: readonly FanPoint[]): FanCurveProblem | null {
  if (points.length < 2) return { code: 'tooFewPoints', count: points.length };
  for (let index = 0; index < points.length; index++) {
    const { flow_m3PerS, dp_Pa } = points[index] as FanPoint;
    if (!(flow_m3PerS >= 0) || !(dp_Pa >= 0)) return { code: 'negative', index };
    const before = points[index - 1];
    if (before && flow_m3PerS === before.flow_m3PerS) return { code: 'flowTwice', index };
    if (before && flow_m3PerS < before.flow_m3PerS) return { code: 'flowNotRising', index };
  }
  const end = points.length - 1;
  const last = points[end] as FanPoint;
  if (!((points[0] as FanPoint).dp_Pa > 0)) return { code: 'noPressure', index: 0 };
  if (last.dp_Pa > (points[end - 1] as FanPoint).dp_Pa) return { code: 'risesAtEnd', index: end };
  if (last.dp_Pa >= (points[0] as FanPoint).dp_Pa) return { code: 'endsAboveStart', index: end };
  return null;
}
