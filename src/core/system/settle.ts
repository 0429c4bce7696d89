import { type AirProperties, airProperties } from '../air/airProperties.ts';
import { gradientStep, largestFlow, solveNetwork } from '../airflow/network.ts';
import { solveHeatNetwork } from '../heat/network.ts';
import { contactConductance_WPerK, type PlateContact } from './heatPath.ts';
import { bracketedFlow_m3PerS } from './operatingPoints.ts';
import type { Unsolved } from './outcome.ts';
import { updateSinkHeat } from './sinkHeat.ts';
import { spreadAir, type Work } from './work.ts';

/** Temperatures may still move by this much when the coupling stops, as the last two changes foretell. */
const tolerance_K = 2e-10;
/** Relative change of the flows in the step before; Newton squares it, so what remains is rounding. */
const flowTolerance = 1e-8;
const mostIterations = 60;
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
  const quick = settleTogether(work, start_kgPerS);
  return quick?.reason === 'notConverged' ? settleInTurn(work, start_kgPerS) : quick;
}

function settleTogether(work: Work, start_kgPerS: number): Unsolved | null {
  firstFlows(work, start_kgPerS);
  updateAir(work);
  const first = solveNetwork(work.path, work.flow, -1, 1e-2);
  if (!first.converged) return notConverged;
  let before_K = Number.POSITIVE_INFINITY;
  let flowChange = 1;
  for (let iteration = 1; iteration <= mostIterations; iteration++) {
    work.iterations = iteration;
    const moved_K = heatStep(work);
    if (!Number.isFinite(moved_K)) return { ok: false, reason: 'noHeatPath', details: {} };
    if (hottest_K(work) > hottestMeaningful_K)
      return { ok: false, reason: 'runaway', details: { T_K: Math.min(hottest_K(work), 1e6) } };
    updateAir(work);
    work.moved_K = remaining_K(moved_K, before_K);
    if (work.moved_K < tolerance_K && flowChange < flowTolerance) return null;
    before_K = moved_K;
    const relax = iteration > 25 ? 0.5 : 1;
    flowChange = gradientStep(work.path, work.flow, -1, relax) / largestFlow(work.flow);
    if (!Number.isFinite(flowChange)) return notConverged;
  }
  return notConverged;
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
    const enough_K = pass > 20 ? 1e-7 * (1 + hottest_K(work) - work.plenum_K) : tolerance_K;
    if (moved_K < enough_K && Math.abs(next - target) < 1e-9 * target) return null;
  }
  return notConverged;
}

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

/**
 * Heat network at the present flows. Its temperatures are rises over the entering air (every fixed temperature is nil), so
 * that the smallest load loses no digits. @returns largest change of a temperature, K; NaN where it has no answer */
function heatStep(work: Work): number {
  const { input, bank, path, flow, heat } = work;
  const { network } = heat;
  const { G_WPerK, rise_K } = network;
  const { factors, sink } = input;
  const fanFlow = flow.massFlow[path.fanLink] as number;
  const before = work.before_K;
  work.plenum_K = input.room.T_K + work.fan_W / (Math.max(fanFlow, 1e-15) * work.cp_JPerKgK);

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
      work.inSink[s] as AirProperties,
      work.cp_JPerKgK,
      factors.channelHeat,
    );
    if (nodes.beforeAir >= 0) G_WPerK[nodes.beforeAir] = state.plateToAir_WPerK;
    if (nodes.afterAir >= 0) G_WPerK[nodes.afterAir] = state.plateToAir_WPerK;
    if (nodes.across >= 0) G_WPerK[nodes.across] = state.across_WPerK;
    G_WPerK[nodes.carry] = state.carry_WPerK;
  }
  for (let r = 0; r < heat.positions.length; r++) {
    const nodes = heat.positions[r] as (typeof heat.positions)[number];
    network.power_W[nodes.film] = work.power_W[r] as number;
    setContact(work, nodes.filmContact);
    setContact(work, nodes.secondContact);
  }

  before.set(rise_K);
  if (!solveHeatNetwork(network)) return Number.NaN;
  let moved = 0;
  for (let i = 0; i < rise_K.length; i++) {
    const d = Math.abs((rise_K[i] as number) - (before[i] as number));
    if (d > moved) moved = d;
  }
  return moved;
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
function updateAir(work: Work, share = 1): void {
  const { heat, flow, path, p_Pa, moist } = work;
  const fanFlow = Math.max(flow.massFlow[path.fanLink] as number, 1e-15);
  let carried_W = 0;
  for (let s = 0; s < heat.sinks.length; s++) {
    const nodes = heat.sinks[s];
    if (!nodes) continue;
    const rise_K = heat.network.rise_K[nodes.air] as number;
    carried_W += (heat.network.G_WPerK[nodes.carry] as number) * rise_K;
    const air = work.inSink[s] as AirProperties;
    airProperties(air, air.T_K + share * (work.plenum_K + rise_K - air.T_K), p_Pa, moist);
  }
  work.carried_W = carried_W;
  work.exhaust_K = work.plenum_K + carried_W / (fanFlow * work.cp_JPerKgK);
  airProperties(work.plenum, work.plenum_K, p_Pa, moist);
  airProperties(work.exhaust, Math.min(work.exhaust_K, 2 * hottestMeaningful_K), p_Pa, moist);
  work.cp_JPerKgK = 0.5 * (work.plenum.cp_JPerKgK + work.exhaust.cp_JPerKgK);
  spreadAir(work);
}

function hottest_K(work: Work): number {
  let most_K = 0;
  for (const rise_K of work.heat.network.rise_K) if (rise_K > most_K) most_K = rise_K;
  return work.plenum_K + most_K;
}
