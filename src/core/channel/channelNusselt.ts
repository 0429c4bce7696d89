import { type DevelopingChannel, nusseltDeveloping, prepareHeldToPlates } from './nusseltDeveloping.ts';
import { nusseltTurbulent } from './nusseltTurbulent.ts';
import { laminarUpTo, turbulentFrom } from './passageDrop.ts';

/** A rectangular channel as the heat side sees it. */
export interface NusseltChannel {
  readonly hydraulic_m: number;
  readonly lengthOverDiameter: number;
  /** z* · Re · Pr, with Re on the hydraulic diameter. */
  readonly zStarScale: number;
  /** Hydraulic diameter over √A. */
  readonly diameterOverRoot: number;
  readonly developing: DevelopingChannel;
}

/** Geometry part, worked once a channel. */
export function prepareNusselt(gap_m: number, height_m: number, length_m: number): NusseltChannel {
  const area_m2 = gap_m * height_m;
  const hydraulic_m = (2 * area_m2) / (gap_m + height_m);
  const diameterOverRoot = hydraulic_m / Math.sqrt(area_m2);
  return {
    hydraulic_m,
    lengthOverDiameter: length_m / hydraulic_m,
    zStarScale: (length_m * hydraulic_m) / area_m2,
    diameterOverRoot,
    developing: prepareHeldToPlates(Math.min(gap_m, height_m) / Math.max(gap_m, height_m)),
  };
}

/**
 * Mean Nusselt number of a channel on its hydraulic diameter, log-mean basis, at any Reynolds number: developing laminar
 * flow, a straight line through the transition, turbulence. Where the laminar entrance gives more it counts, so that more
 * air never takes less heat.
 */
export function channelNusselt(channel: NusseltChannel, reynolds: number, prandtl: number): number {
  const laminar = laminarNusselt(channel, reynolds, prandtl);
  if (reynolds <= laminarUpTo) return laminar;
  if (reynolds >= turbulentFrom) {
    return Math.max(laminar, nusseltTurbulent(reynolds, prandtl, channel.lengthOverDiameter));
  }
  const start = laminarNusselt(channel, laminarUpTo, prandtl);
  const end = nusseltTurbulent(turbulentFrom, prandtl, channel.lengthOverDiameter);
  const share = (reynolds - laminarUpTo) / (turbulentFrom - laminarUpTo);
  return Math.max(laminar, start + share * (end - start));
}

function laminarNusselt(channel: NusseltChannel, reynolds: number, prandtl: number): number {
  const zStar = channel.zStarScale / (reynolds * prandtl);
  return channel.diameterOverRoot * nusseltDeveloping(channel.developing, zStar, prandtl);
}
