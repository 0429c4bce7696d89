import { evenPlaces, signScanRoots } from '../solve/signScanRoots.ts';

export interface OperatingPoint {
  readonly flow_m3PerS: number;
  readonly dp_Pa: number;
  /** A small disturbance dies away: the system curve is the steeper one. */
  readonly stable: boolean;
}

const intervals = 160;

/**
 * Every flow between zero and `most` where fan and system agree: signs at some flows, then Brent. A crossing is stable where
 * the fan's surplus falls with flow, that is where dp_sys/dQ > dp_fan/dQ.
 * @param flows to look at, rising: close to one another where fan and system may meet more than once
 */
export function findOperatingPoints(
  fan_Pa: (flow: number) => number,
  system_Pa: (flow: number) => number,
  most_m3PerS: number,
  flows: readonly number[] = evenPlaces(most_m3PerS * 1e-6, most_m3PerS, intervals),
): OperatingPoint[] {
  const surplus = (flow: number) => fan_Pa(flow) - system_Pa(flow);
  return signScanRoots(surplus, flows, 1e-13 * most_m3PerS).map(({ root, rising }) => ({
    flow_m3PerS: root,
    dp_Pa: fan_Pa(root),
    stable: !rising,
  }));
}
