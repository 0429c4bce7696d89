import { brentRoot } from '../solve/brentRoot.ts';

export interface OperatingPoint {
  readonly flow_m3PerS: number;
  readonly dp_Pa: number;
  /** A small disturbance dies away: the system curve is the steeper one. */
  readonly stable: boolean;
}

const intervals = 160;

/**
 * Every flow between zero and `most` where fan and system agree: signs on a grid, then Brent. A crossing is stable where
 * the fan's surplus falls with flow, that is where dp_sys/dQ > dp_fan/dQ.
 */
export function findOperatingPoints(fan_Pa: (flow: number) => number, system_Pa: (flow: number) => number, most_m3PerS: number): OperatingPoint[] {
  const surplus = (flow: number) => fan_Pa(flow) - system_Pa(flow);
  const points: OperatingPoint[] = [];
  let low = most_m3PerS * 1e-6;
  let before = surplus(low);
  for (let i = 1; i <= intervals; i++) {
    const high = (most_m3PerS * i) / intervals;
    const here = surplus(high);
    if (before > 0 !== here > 0) {
      const found = brentRoot(surplus, low, high, 1e-13 * most_m3PerS);
      if (found.ok) points.push({ flow_m3PerS: found.root, dp_Pa: fan_Pa(found.root), stable: before > 0 });
    }
    low = high;
    before = here;
  }
  return points;
}
