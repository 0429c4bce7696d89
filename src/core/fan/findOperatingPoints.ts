import { signScanRoots } from '../solve/signScanRoots.ts';

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
export function findOperatingPoints(
  fan_Pa: (flow: number) => number,
  system_Pa: (flow: number) => number,
  most_m3PerS: number,
): OperatingPoint[] {
  const surplus = (flow: number) => fan_Pa(flow) - system_Pa(flow);
  const crossings = signScanRoots(surplus, most_m3PerS * 1e-6, most_m3PerS, intervals, 1e-13 * most_m3PerS);
  return crossings.map(({ root, rising }) => ({
    flow_m3PerS: root,
    dp_Pa: fan_Pa(root),
    stable: !rising,
  }));
}
