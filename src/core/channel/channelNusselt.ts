import {
  type DevelopingChannel,
  fifthPower,
  nusseltDeveloping,
  prepareDeveloping,
} from './nusseltDeveloping.ts';
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

/** Developed Nusselt number between plates of one temperature, on the hydraulic diameter: no rectangle does better. */
const developedBetweenPlates = 7.541;

/** Geometry part, worked once a channel. The composite overshoots the plates in very narrow slots and is held to them. */
export function prepareNusselt(gap_m: number, height_m: number, length_m: number): NusseltChannel {
  const area_m2 = gap_m * height_m;
  const hydraulic_m = (2 * area_m2) / (gap_m + height_m);
  const diameterOverRoot = hydraulic_m / Math.sqrt(area_m2);
  const { leveque5, developed5 } = prepareDeveloping(Math.min(gap_m, height_m) / Math.max(gap_m, height_m));
  const plates5 = fifthPower(developedBetweenPlates / diameterOverRoot);
  return {
    hydraulic_m,
    lengthOverDiameter: length_m / hydraulic_m,
    zStarScale: (length_m * hydraulic_m) / area_m2,
    diameterOverRoot,
    developing: { leveque5, developed5: Math.min(developed5, plates5) },
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
