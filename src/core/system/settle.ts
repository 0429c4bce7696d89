import { type AirProperties, airProperties } from '../air/airProperties.ts';
import { linkDrop } from '../airflow/linkLaw.ts';
import { gradientStep, largestFlow, solveNetwork } from '../airflow/network.ts';
import { draught_Pa } from '../freeConvection/draught_Pa.ts';
import { solveHeatNetwork } from '../heat/network.ts';
import { contactConductance_WPerK, type PlateContact, type SinkPath } from './heatPath.ts';
import { bracketedFlow_m3PerS } from './operatingPoints.ts';
import type { Unsolved } from './outcome.ts';
import { restingWall_K, type ShellHeat, updateShell } from './shell.ts';
import { updateSinkHeat } from './sinkHeat.ts';
import { leavingShare, spreadAir, type Work } from './work.ts';

/** Temperatures may still move by this much when the coupling stops, as the last two changes foretell. */
const tolerance_K = 1e-9;
/** The same where draught and warmth drive one another, round after round by a ninth. */
const stoppedTolerance_K = 1e-7;
/**
 * Relative change of the flows in the step before; Newton squares it, so what remains is rounding. Where everything is hardly
 * warm, draughts are rounding too, and move nothing.
 */
const flowTolerance = 1e-8;
const mostIterations = 60;
const mostStoppedIterations = 240;
const mostGentlePasses = 300;
const mostPasses = 80;
const notConverged: Unsolved = { ok: false, reason: 'notConverged', details: {} };
/** Beyond this nothing here is a fan box any more, and the relations for air mean nothing. */
const hottestMeaningful_K = 1500;

/**
 * Couples air and heat: one step of the flow network, the sinks at those flows, the heat network, the air at those
 * temperatures, and again until nothing moves. Writes the answer into `work`.
 * @param start flow through the fan to begin with, kg/s
 */
export function settle(work: Work, start_kgPerS: number): Unsolved | null {
  firstFlows(work, start_kgPerS);
  updateAir(work);
  const first = solveNetwork(work.path, work.flow, -1, 1e-2);
  const quick = first.converged ? settleTogether(work) : notConverged;
  if (quick?.reason !== 'notConverged') return quick;
  const gentle = settleGently(work, start_kgPerS);
  return gentle?.reason === 'notConverged' ? settleInTurn(work, start_kgPerS) : gentle;
}

/**
 * The same with the fans at a stand: nothing but warmth moves the air, so the first flows come from what the watts would
 * drive through the fins alone.
 */
export function settleStopped(work: Work): Unsolved | null {
  spreadAir(work);
  const start_kgPerS = draughtFlow_kgPerS(work);
  firstFlows(work, start_kgPerS);
  const quick = settleTogether(work);
  return quick?.reason === 'notConverged' ? settleGently(work, start_kgPerS) : quick;
}

/**
 * Where draughts among the passages keep answering each other: flows at the air as it is, heat at those flows, the air a part
 * of the way there.
 */
function settleGently(work: Work, start_kgPerS: number): Unsolved | null {
  firstFlows(work, start_kgPerS);
  work.answers = false;
  for (let pass = 1; pass <= mostGentlePasses; pass++) {
    work.iterations = pass;
    const moved_K = heatStep(work);
    if (!Number.isFinite(moved_K)) return { ok: false, reason: 'noHeatPath', details: {} };
    if (hottest_K(work) > hottestMeaningful_K)
      return { ok: false, reason: 'runaway', details: { T_K: Math.min(hottest_K(work), 1e6) } };
    const share = pass < 100 ? 0.3 : 0.1;
    updateAir(work, share);
    work.moved_K = moved_K / share;
    if (pass > 3 && work.moved_K < 1e-6 * (1 + hottestRise_K(work))) return null;
    if (!solveNetwork(work.path, work.flow, -1, 1e-11).converged) return notConverged;
  }
  return notConverged;
}

/** Flows that the warmth in `work` drives as it is, with the fans at a stand: where time begins to run. */
export function draughtStart(work: Work): void {
  spreadAir(work);
  firstFlows(work, draughtFlow_kgPerS(work));
  setConductances(work, false);
  updateAir(work);
  solveNetwork(work.path, work.flow, -1, 1e-6);
}

/** From the flows that stand in `work`. */
function settleTogether(work: Work): Unsolved | null {
  const enough_K = work.path.fans ? tolerance_K : stoppedTolerance_K;
  const most = work.path.fans ? mostIterations : mostStoppedIterations;
  let before_K = Number.POSITIVE_INFINITY;
  let flowChange = 1;
  for (let iteration = 1; iteration <= most; iteration++) {
    work.iterations = iteration;
    const moved_K = heatStep(work);
    if (!Number.isFinite(moved_K)) return { ok: false, reason: 'noHeatPath', details: {} };
    if (hottest_K(work) > hottestMeaningful_K)
      return { ok: false, reason: 'runaway', details: { T_K: Math.min(hottest_K(work), 1e6) } };
    updateAir(work);
    work.moved_K = remaining_K(moved_K, before_K);
    if (work.moved_K < enough_K && flowChange * warmth(work) < flowTolerance) return null;
    // A wide gap may creep for ever without moving a temperature.
    if (work.path.fans === null && iteration > 40 && work.moved_K < tolerance_K) return null;
    before_K = moved_K;
    const relax = iteration % 50 > 25 ? 0.5 : 1;
    flowChange = gradientStep(work.path, work.flow, -1, relax) / (largestFlow(work.flow) + 1e-15);
    if (!Number.isFinite(flowChange)) return notConverged;
  }
  return notConverged;
}

/** How much a change of flow can matter: nothing but warmth moves the air of a box without fans, and it moves little warmth. */
function warmth(work: Work): number {
  return work.path.fans ? 1 : Math.min(1, hottestRise_K(work));
}

/** What a sequence of shrinking changes still has to go, taken as geometric; never less than rounding moves anyway. */
function remaining_K(moved_K: number, before_K: number): number {
  if (moved_K < 1e-12) return moved_K;
  return moved_K < 0.5 * before_K && Number.isFinite(before_K)
    ? (moved_K * moved_K) / (before_K - moved_K)
    : moved_K;
}

/**
 * The slow and sure way, for fan curves that Newton keeps jumping about on: at each pass the operating point is bracketed
 * on the network with the flow imposed, then the heat follows.
 */
export function settleInTurn(work: Work, start_kgPerS: number): Unsolved | null {
  firstFlows(work, start_kgPerS);
  for (let pass = 1; pass <= mostPasses; pass++) {
    work.iterations = pass;
    // Hot air is thin and viscous: a slow passage answers each change with an opposite one, so meet it half way.
    const share = pass > 5 ? 0.4 : 1;
    updateAir(work, share);
    const flow_m3PerS = bracketedFlow_m3PerS(work);
    if (flow_m3PerS === null) return { ok: false, reason: 'noOperatingPoint', details: {} };
    const target = flow_m3PerS * work.room.rho_kgPerM3;
    const before = work.flow.massFlow[work.path.fanLink] as number;
    const next = before + share * (target - before);
    imposeFlow(work, next);
    const moved_K = heatStep(work);
    if (!Number.isFinite(moved_K)) return { ok: false, reason: 'noHeatPath', details: {} };
    if (hottest_K(work) > hottestMeaningful_K)
      return { ok: false, reason: 'runaway', details: { T_K: Math.min(hottest_K(work), 1e6) } };
    work.moved_K = moved_K;
    // Parts hundreds of kelvin hot in a trickle of air stop moving a little above rounding; the answer says how far.
    const enough_K = pass > 20 ? 1e-7 * (1 + hottestRise_K(work)) : tolerance_K;
    if (moved_K < enough_K && Math.abs(next - target) < 1e-9 * target) {
      // What is carried belongs to the temperatures just found.
      updateAir(work, 1);
      return null;
    }
  }
  return notConverged;
}

/** Flow at which the draught of all watts in fins and headroom, c/ṁ, meets what the box takes from it, both cold. */
function draughtFlow_kgPerS(work: Work): number {
  const { path, room, flow } = work;
  const { sink, box } = work.input;
  const power_W = work.power_W.reduce((sum, watts) => sum + watts, 0);
  const rise_m = Math.cos(box.tilt_rad) * (0.5 * sink.length_m + box.headroom_m);
  const perFlow = draught_Pa(
    room.rho_kgPerM3,
    room.rho_kgPerM3 * (1 - power_W / (room.cp_JPerKgK * room.T_K)),
    Math.abs(rise_m),
  );
  if (!(perFlow > 1e-15)) return 0;
  const fins = path.finLink.filter((link) => link >= 0);
  let q = 1e-4;
  for (let pass = 0; pass < 4; pass++) {
    let drop_Pa = 0;
    path.links.forEach((link, i) => {
      const own = i === fins[0] ? q / fins.length : link.passage ? 0 : q;
      if (own > 0) linkDrop(pair, link.law, own, flow.rho[i] as number, flow.mu[i] as number);
      drop_Pa += own > 0 ? (pair[0] as number) : 0;
    });
    // Drop goes between the first and the second power of flow, draught as one over it.
    q *= Math.exp(Math.log(perFlow / (q * drop_Pa)) / 2.4);
  }
  return rise_m < 0 ? -q : q;
}

const pair = new Float64Array(2);

/** Scales the flows to the new one through the fan and settles the rest of the network under it. */
function imposeFlow(work: Work, massFlow_kgPerS: number): void {
  const { path, flow } = work;
  const scale = massFlow_kgPerS / Math.max(flow.massFlow[path.fanLink] as number, 1e-15);
  for (let i = 0; i < flow.massFlow.length; i++) flow.massFlow[i] = (flow.massFlow[i] as number) * scale;
  flow.massFlow[path.fanLink] = massFlow_kgPerS;
  solveNetwork(path, flow, path.fanLink);
}

/** A first guess: the same flow all along the main way, shared by area where it parts. */
function firstFlows(work: Work, start_kgPerS: number): void {
  const { links } = work.path;
  const { massFlow } = work.flow;
  let area = 0;
  for (const link of links) if (link.passage) area += link.area_m2;
  links.forEach((link, i) => {
    massFlow[i] = link.passage ? (start_kgPerS * link.area_m2) / area : start_kgPerS;
  });
}

/** Heat network at the present flows, steady. @returns largest change of a temperature, K; NaN where it has no answer */
function heatStep(work: Work): number {
  const { network } = work.heat;
  setConductances(work, true);
  const before = work.before_K;
  before.set(network.rise_K);
  if (!solveHeatNetwork(network)) return Number.NaN;
  let moved = 0;
  for (const i of work.heat.judged) {
    const d = Math.abs((network.rise_K[i] as number) - (before[i] as number));
    if (d > moved) moved = d;
  }
  return moved;
}

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
  const state = work.shellHeat[s];
  if (!shell || !state) return;
  const { G_WPerK, rise_K, power_W } = work.heat.network;
  const rise = plateRise_K(work, before, after);
  const gapFlow = gapFlow_kgPerS(work, s) * forward;
  updateShell(state, shell.faces, work, rise, rise_K[shell.wall] as number, gapFlow);
  if (restful) {
    // A wall at rest follows its sink: where it is not there yet, the second look hardly moves any more.
    const resting_K = restingWall_K(state, rise, roomRise_K);
    if (Math.abs(resting_K - (rise_K[shell.wall] as number)) > 1e-4)
      updateShell(state, shell.faces, work, rise, resting_K, gapFlow);
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
function gapRise_K(work: Work, s: number): number {
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
    const shell = heat.shells[s];
    if (!nodes || !shell) continue;
    const airRise_K = rise_K[nodes.air] as number;
    carried_W += (G_WPerK[nodes.carry] as number) * airRise_K;
    const air = work.inSink[s] as AirProperties;
    airProperties(air, air.T_K + share * (work.entering_K + airRise_K - air.T_K), p_Pa, moist);
    const gap_K = gapRise_K(work, s);
    carried_W += (work.shellHeat[s] as ShellHeat).carry_WPerK * gap_K;
    gapRise += shell.faces.area_m2 * gap_K;
    gapArea_m2 += shell.faces.area_m2;
    shell_W += givenOff_W(work, s, roomRise_K);
  }
  work.carried_W = carried_W;
  work.shell_W = shell_W;
  const gap_K = work.entering_K + (gapArea_m2 > 0 ? gapRise / gapArea_m2 : 0);
  work.gap_K += share * (gap_K - work.gap_K);
  const hottest_K = Math.min(work.entering_K + hottestRise_K(work), 2 * hottestMeaningful_K);
  const exhaust_K = Math.min(
    hottest_K,
    work.entering_K + carried_W / (Math.max(Math.abs(fanFlow), 1e-15) * work.cp_JPerKgK),
  );
  work.exhaust_K += share * (exhaust_K - work.exhaust_K);
  airProperties(work.plenum, work.plenum_K, p_Pa, moist);
  airProperties(work.gap, Math.min(work.gap_K, hottest_K), p_Pa, moist);
  airProperties(work.exhaust, work.exhaust_K, p_Pa, moist);
  work.cp_JPerKgK = 0.5 * (work.plenum.cp_JPerKgK + work.exhaust.cp_JPerKgK);
  spreadAir(work);
}

/** Watts that leave the walls and the opening of one sink, by the tangents of this round. */
function givenOff_W(work: Work, s: number, roomRise_K: number): number {
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

function hottestRise_K(work: Work): number {
  let most_K = 0;
  for (const rise_K of work.heat.network.rise_K) if (rise_K > most_K) most_K = rise_K;
  return most_K;
}

function hottest_K(work: Work): number {
  return work.entering_K + hottestRise_K(work);
}
