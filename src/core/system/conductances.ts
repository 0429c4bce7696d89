import type { AirProperties } from '../air/airProperties.ts';
import type { SinkPath } from './heatLayout.ts';
import { contactConductance_WPerK, type PlateContact } from './heatPath.ts';
import { restingWall_K, updateShell } from './shell.ts';
import { updateSinkHeat } from './sinkHeat.ts';
import { leavingShare, type Work } from './work.ts';

/**
 * Every conductance and power of the heat network at the present flows and temperatures. Its temperatures are rises over the
 * entering air, so that the smallest load loses no digits; what leaves to the room itself is told apart by a power.
 * @param restful walls have settled at the temperatures of their sinks; while time runs they lag behind
 */
export function setConductances(work: Work, restful: boolean): void {
  const { input, bank, path, flow, heat } = work;
  const { G_WPerK, power_W } = heat.network;
  const { factors, sink } = input;
  const fanFlow = flow.massFlow[path.fanLink] as number;
  work.plenum_K = input.room.T_K + work.fan_W / (Math.max(fanFlow, 1e-15) * work.cp_JPerKgK);
  work.entering_K = work.reversed ? input.room.T_K : work.plenum_K;
  const roomRise_K = input.room.T_K - work.entering_K;
  const forward = leavingShare(work);

  for (let s = 0; s < heat.sinks.length; s++) {
    const nodes = heat.sinks[s];
    const state = work.sinkHeat[s];
    if (!nodes || !state) continue;
    const q = flow.massFlow[path.finLink[s] as number] as number;
    updateSinkHeat(
      state,
      bank,
      sink,
      q,
      Math.max(q * forward, 1e-15),
      work.inSink[s] as AirProperties,
      work.cp_JPerKgK,
      factors.channelHeat,
    );
    if (nodes.beforeAir >= 0) G_WPerK[nodes.beforeAir] = state.plateToAir_WPerK;
    if (nodes.afterAir >= 0) G_WPerK[nodes.afterAir] = state.plateToAir_WPerK;
    if (nodes.across >= 0) G_WPerK[nodes.across] = state.across_WPerK;
    G_WPerK[nodes.carry] = state.carry_WPerK;
    setShell(work, s, nodes, roomRise_K, forward, restful);
  }
  for (let r = 0; r < heat.positions.length; r++) {
    const nodes = heat.positions[r] as (typeof heat.positions)[number];
    power_W[nodes.film] = work.power_W[r] as number;
    setContact(work, nodes.filmContact);
    setContact(work, nodes.secondContact);
  }
}

/** The walls beside sink `s`: both plates share what its faces give. */
function setShell(
  work: Work,
  s: number,
  { before, after, across }: SinkPath,
  roomRise_K: number,
  forward: number,
  restful: boolean,
): void {
  const shell = work.heat.shells[s];
  const faces = work.heat.faces[s];
  const state = work.shellHeat[s];
  if (!shell || !faces || !state) return;
  const { G_WPerK, rise_K, power_W } = work.heat.network;
  const rise = plateRise_K(work, before, after);
  const gapFlow = gapFlow_kgPerS(work, s) * forward;
  updateShell(state, faces, work, rise, rise_K[shell.wall] as number, gapFlow);
  if (restful) {
    // A wall at rest follows its sink: where it is not there yet, the second look hardly moves any more. Without fans everything
    // moves at once, and only a long way is worth that look.
    const resting_K = restingWall_K(state, rise, roomRise_K);
    if (Math.abs(resting_K - (rise_K[shell.wall] as number)) > (work.path.fans ? 1e-4 : 1))
      updateShell(state, faces, work, rise, resting_K, gapFlow);
  }
  // The air in the gap holds no heat: plate, wall and entering air, joined through it, are joined among themselves.
  const star = 2 * state.toGap_WPerK + state.carry_WPerK;
  const past = (state.toGap_WPerK * state.toGap_WPerK) / star;
  const carried = (state.toGap_WPerK * state.carry_WPerK) / star;
  const both = before >= 0 && after >= 0;
  const half = both ? 0.5 : 1;
  const wallward = half * (state.radiation_WPerK + past);
  const outward = half * (state.upwards_WPerK + carried);
  const upwards_W = half * (state.upwards_WPerK * roomRise_K + state.upwardsOffset_W);
  if (before >= 0) {
    G_WPerK[shell.beforeWall] = wallward;
    G_WPerK[shell.beforeOut] = outward;
    power_W[before] = upwards_W;
  }
  if (after >= 0) {
    G_WPerK[shell.afterWall] = wallward;
    G_WPerK[shell.afterOut] = outward;
    power_W[after] = upwards_W;
  }
  if (across >= 0) G_WPerK[across] = (G_WPerK[across] as number) + 0.25 * past;
  G_WPerK[shell.wallOut] = state.outwards_WPerK + carried;
  power_W[shell.wall] = state.outwards_WPerK * roomRise_K + state.outwardsOffset_W;
}

/** Rise of the air in the gap beside sink `s`: between plate, wall and the air that comes in. */
export function gapRise_K(work: Work, s: number): number {
  const nodes = work.heat.sinks[s];
  const shell = work.heat.shells[s];
  const state = work.shellHeat[s];
  if (!nodes || !shell || !state) return 0;
  const { toGap_WPerK: t, carry_WPerK } = state;
  const wall_K = work.heat.network.rise_K[shell.wall] as number;
  return (t * (plateRise_K(work, nodes.before, nodes.after) + wall_K)) / (2 * t + carry_WPerK);
}

/** Mean rise of the plates of a sink. */
export function plateRise_K(work: Work, before: number, after: number): number {
  const { rise_K } = work.heat.network;
  if (before < 0) return rise_K[after] as number;
  if (after < 0) return rise_K[before] as number;
  return 0.5 * ((rise_K[before] as number) + (rise_K[after] as number));
}

/** Air that goes up beside one sink: its share of the side gaps by its depth, and one end gap for the first and the last. */
function gapFlow_kgPerS({ path, bank, flow }: Work, s: number): number {
  const side = path.sideLink < 0 ? 0 : (flow.massFlow[path.sideLink] as number);
  const isEnd = s === 0 || s === bank.sinkCount - 1;
  const end = path.endLink < 0 || !isEnd ? 0 : 0.5 * (flow.massFlow[path.endLink] as number);
  return (side * (bank.sinkDepth_m[s] as number)) / bank.row_m + end;
}

function setContact(work: Work, contact: PlateContact | null): void {
  if (!contact) return;
  const state = work.sinkHeat[contact.sink];
  if (!state) return;
  work.heat.network.G_WPerK[contact.conductance] = contactConductance_WPerK(
    contact,
    work.input.sink.k_WPerMK,
    state.plateH_WPerM2K,
    work.input.factors.spreading,
  );
}

/** Watts that leave the walls and the opening of one sink, by the tangents of this round. */
export function givenOff_W(work: Work, s: number, roomRise_K: number): number {
  const nodes = work.heat.sinks[s];
  const shell = work.heat.shells[s];
  const state = work.shellHeat[s];
  if (!nodes || !shell || !state) return 0;
  const wall_K = (work.heat.network.rise_K[shell.wall] as number) - roomRise_K;
  const plate_K = plateRise_K(work, nodes.before, nodes.after) - roomRise_K;
  return (
    state.outwards_WPerK * wall_K -
    state.outwardsOffset_W +
    state.upwards_WPerK * plate_K -
    state.upwardsOffset_W
  );
}
