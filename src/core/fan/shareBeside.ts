import { crossingAt, type FallingCurve } from './fallingCurve.ts';

export interface Shared {
  readonly dp_Pa: number;
  /** Through each of the curves; together the flow asked for. */
  readonly flows_m3PerS: readonly number[];
}

/**
 * How a flow divides among curves side by side: the one pressure is halved in upon, then what is left between its two sides
 * goes in proportion, so that the flows add up even where a curve is level.
 */
export function shareBeside(curves: readonly FallingCurve[], flow_m3PerS: number, scale_Pa: number): Shared {
  const total = (dp_Pa: number) => curves.reduce((sum, curve) => sum + crossingAt(curve, dp_Pa).least, 0);
  let low = -scale_Pa;
  let high = scale_Pa;
  while (total(low) < flow_m3PerS) low *= 2;
  while (total(high) > flow_m3PerS) high *= 2;
  for (let i = 0; i < 60; i++) {
    const middle = 0.5 * (low + high);
    if (total(middle) > flow_m3PerS) low = middle;
    else high = middle;
  }
  const least = curves.map((curve) => crossingAt(curve, high).least);
  const most = curves.map((curve) => crossingAt(curve, low).most);
  const sum = (flows: readonly number[]) => flows.reduce((all, flow) => all + flow, 0);
  const between = sum(most) - sum(least);
  const share = between > 0 ? (flow_m3PerS - sum(least)) / between : 0;
  return {
    dp_Pa: high,
    flows_m3PerS: least.map((flow, i) => flow + share * ((most[i] as number) - flow)),
  };
}
