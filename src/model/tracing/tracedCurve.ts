import { evaluatePchip, preparePchip } from '../../core/solve/pchip.ts';
import type { AxisMap, Reading } from './axisMap.ts';
import type { Place } from './tracing.ts';

/** So many pieces between two points look round at any zoom. */
const pieces = 12;

/**
 * The curve that the computation takes through these points, as it lies over the picture. The interpolation is that of
 * pressure over flow, whatever the scales of the sheet. @returns nothing where flow does not rise from point to point
 */
export function tracedCurve(map: AxisMap, points: readonly Reading[]): readonly Place[] {
  const flows = points.map(({ flow_m3PerS }) => flow_m3PerS);
  if (flows.length < 2 || flows.some((flow, at) => at > 0 && flow <= (flows[at - 1] as number))) return [];
  const curve = preparePchip(
    flows,
    points.map(({ dp_Pa }) => dp_Pa),
  );
  const out = new Float64Array(2);
  return flows.flatMap((flow, at) => {
    const next = flows[at + 1];
    const shares = next === undefined ? [0] : Array.from({ length: pieces }, (_, piece) => piece / pieces);
    return shares.flatMap((share) => {
      const flow_m3PerS = flow + share * ((next ?? flow) - flow);
      evaluatePchip(curve, flow_m3PerS, out);
      return map.toPlace({ flow_m3PerS, dp_Pa: out[0] as number }) ?? [];
    });
  });
}
