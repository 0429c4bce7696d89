import type { AirProperties } from '../air/airProperties.ts';
import { channelNusselt, type NusseltChannel } from '../channel/channelNusselt.ts';
import { finBetweenPlates } from '../fins/finBetweenPlates.ts';
import { sinkAirConductance_WPerK } from '../fins/sinkAirConductance_WPerK.ts';
import type { BankGeometry } from './geometry.ts';
import type { SinkInput } from './input.ts';

/** What the air of one sink does at its present flow: conductances of the heat network, and what they follow from. */
export interface SinkHeat {
  readonly channel: NusseltChannel;
  readonly plates: number;
  velocity_mPerS: number;
  /** Of its air, what leaves the box in the end instead of going round in it. */
  leaving_kgPerS: number;
  reynolds: number;
  h_WPerM2K: number;
  /** Of a fin seen from one plate: heat taken over heat taken by a fin that is as hot as its root all over. */
  finEfficiency: number;
  plateToAir_WPerK: number;
  across_WPerK: number;
  carry_WPerK: number;
  /** Plate to air, per area of plate: what the constriction under a chip sees. */
  plateH_WPerM2K: number;
}

/** @param channel of every sink alike: `prepareNusselt` of the fin gap */
export function createSinkHeat(bank: BankGeometry, channel: NusseltChannel, s: number): SinkHeat {
  return {
    channel,
    plates: Number(bank.plateBefore[s]) + Number(bank.plateAfter[s]),
    velocity_mPerS: 0,
    leaving_kgPerS: 0,
    reynolds: 0,
    h_WPerM2K: 0,
    finEfficiency: 1,
    plateToAir_WPerK: 0,
    across_WPerK: 0,
    carry_WPerK: 0,
    plateH_WPerM2K: 0,
  };
}

const fin = new Float64Array(2);

/**
 * Heat side of one sink at a mass flow. Mean (log-mean basis) coefficient from the channel, fins between plates or with an
 * open tip taken as adiabatic; the warming of the air enters once, as the conductance from mean air to entering air.
 */
export function updateSinkHeat(
  state: SinkHeat,
  bank: BankGeometry,
  sink: SinkInput,
  massFlow_kgPerS: number,
  leaving_kgPerS: number,
  air: AirProperties,
  cp_JPerKgK: number,
  heatFactor: number,
): void {
  const { finGap_m: b, channels } = bank;
  const { finHeight_m: H, finThickness_m: t, length_m: L } = sink;
  const flow = Math.max(Math.abs(massFlow_kgPerS), 1e-15);
  const v = flow / (air.rho_kgPerM3 * channels * b * H);
  const reynolds = (air.rho_kgPerM3 * v * state.channel.hydraulic_m) / air.mu_PaS;
  const h =
    (heatFactor * channelNusselt(state.channel, reynolds, air.prandtl) * air.k_WPerMK) /
    state.channel.hydraulic_m;
  finBetweenPlates(fin, h, sink.k_WPerMK, t, H, L, state.plates === 2);
  const onFins = fin[0] as number;
  const perPlate = channels * (b * L * h + onFins);
  state.velocity_mPerS = v;
  state.leaving_kgPerS = leaving_kgPerS;
  state.reynolds = reynolds;
  state.h_WPerM2K = h;
  state.finEfficiency = (onFins * state.plates) / (2 * h * H * L);
  state.plateToAir_WPerK = perPlate;
  state.across_WPerK = state.plates === 2 ? channels * (fin[1] as number) : 0;
  state.carry_WPerK = sinkAirConductance_WPerK(perPlate * state.plates, leaving_kgPerS * cp_JPerKgK);
  state.plateH_WPerM2K = perPlate / (sink.width_m * L);
}
