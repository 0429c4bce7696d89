/** Where a fan runs: flow, pressure and the power it takes. */
export interface FanDuty {
  readonly flow_m3PerS: number;
  readonly dp_Pa: number;
  readonly power_W: number;
}

/**
 * A fan's duty at another speed, size and air density, by the laws of similarity (the trade's standard exponents).
 * Holds for fans of one shape at one point of their curve; small fans stray by a few per cent far from rated speed.
 * @param ratio new over old, each 1 where nothing changes
 */
export function scaleFanDuty(
  duty: FanDuty,
  ratio: { readonly speed: number; readonly size: number; readonly density: number },
): FanDuty {
  const { speed, size, density } = ratio;
  const area = size * size;
  return {
    flow_m3PerS: duty.flow_m3PerS * speed * area * size,
    dp_Pa: duty.dp_Pa * density * speed * speed * area,
    power_W: duty.power_W * density * speed * speed * speed * area * area * size,
  };
}

/** Power that a fan puts into the pressure of a stream. */
export function airPower_W(flow_m3PerS: number, dp_Pa: number): number {
  return flow_m3PerS * dp_Pa;
}

/** Air power over electrical power; nil for a fan without power. */
export function fanEfficiency(flow_m3PerS: number, dp_Pa: number, power_W: number): number {
  return power_W > 0 ? airPower_W(flow_m3PerS, dp_Pa) / power_W : 0;
}
