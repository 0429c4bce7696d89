import { type AirProperties, airProperties } from '../air/airProperties.ts';
import { gapRise_K, givenOff_W } from './conductances.ts';
import type { ShellHeat } from './shell.ts';
import { spreadAir, type Work } from './work.ts';

/** Nothing here bears more, and the relations for air mean nothing there. */
export const hottestMeaningful_K = 1500;

/** Properties of the air in every place, moved by `share` of the way to its present temperature. */
export function updateAir(work: Work, share = 1): void {
  const { heat, flow, path, p_Pa, moist } = work;
  const { rise_K, G_WPerK } = heat.network;
  const fanFlow = flow.massFlow[path.fanLink] as number;
  work.reversed = fanFlow < 0;
  const roomRise_K = work.input.room.T_K - work.entering_K;
  let carried_W = 0;
  let shell_W = 0;
  let gapRise = 0;
  let gapArea_m2 = 0;
  for (let s = 0; s < heat.sinks.length; s++) {
    const nodes = heat.sinks[s];
    const faces = heat.faces[s];
    if (!nodes || !faces) continue;
    const airRise_K = rise_K[nodes.air] as number;
    carried_W += (G_WPerK[nodes.carry] as number) * airRise_K;
    const air = work.inSink[s] as AirProperties;
    const there_K = Math.min(work.entering_K + airRise_K, 2 * hottestMeaningful_K);
    airProperties(air, air.T_K + share * (there_K - air.T_K), p_Pa, moist);
    const beside_K = gapRise_K(work, s);
    carried_W += (work.shellHeat[s] as ShellHeat).carry_WPerK * beside_K;
    gapRise += faces.area_m2 * beside_K;
    gapArea_m2 += faces.area_m2;
    shell_W += givenOff_W(work, s, roomRise_K);
  }
  work.carried_W = carried_W;
  work.shell_W = shell_W;
  const gap_K = work.entering_K + (gapArea_m2 > 0 ? gapRise / gapArea_m2 : 0);
  work.gap_K += share * (gap_K - work.gap_K);
  const most_K = Math.min(hottest_K(work), 2 * hottestMeaningful_K);
  const exhaust_K = Math.min(
    most_K,
    work.entering_K + carried_W / (Math.max(Math.abs(fanFlow), 1e-15) * work.cp_JPerKgK),
  );
  work.exhaust_K += share * (exhaust_K - work.exhaust_K);
  airProperties(work.plenum, work.plenum_K, p_Pa, moist);
  airProperties(work.gap, Math.min(work.gap_K, most_K), p_Pa, moist);
  airProperties(work.exhaust, work.exhaust_K, p_Pa, moist);
  work.cp_JPerKgK = 0.5 * (work.plenum.cp_JPerKgK + work.exhaust.cp_JPerKgK);
  spreadAir(work);
}

/** Rise of the hottest node over the entering air. */
export function hottestRise_K(work: Work): number {
  const { rise_K } = work.heat.network;
  let most_K = 0;
  for (let i = 0; i < rise_K.length; i++) if ((rise_K[i] as number) > most_K) most_K = rise_K[i] as number;
  return most_K;
}

export function hottest_K(work: Work): number {
  return work.entering_K + hottestRise_K(work);
}
