import { airProperties } from '../air/airProperties.ts';
import { gradientStep, largestFlow, solveNetwork } from '../airflow/network.ts';
import { solveHeatNetwork } from '../heat/network.ts';
import { setConductances } from './conductances.ts';
import { draughtFlow_kgPerS, firstFlows } from './firstFlows.ts';
import { bracketedFlow_m3PerS } from './operatingPoints.ts';
import type { Unsolved } from './outcome.ts';
import { hottest_K, hottestMeaningful_K, hottestRise_K, updateAir } from './updateAir.ts';
import { spreadAir, type Work } from './work.ts';

/** Temperatures may still move by this much when the coupling stops, as the last two changes foretell. */
const tolerance_K = 1e-9;
/** The same where draught and warmth drive one another, round after round by a ninth. */
const stoppedTolerance_K = 1e-6;
/**
 * Relative change of the flows in the step before; Newton squares it, so what remains is rounding. Where everything is hardly
 * warm, draughts are rounding too, and move nothing.
 */
const flowTolerance = 1e-8;
const mostIterations = 60;
const mostStoppedIterations = 240;
const mostGentlePasses = 300;
const mostPasses = 80;
/** The first rounds may overshoot: only after these is too hot too hot, unless it is so many times over. */
const patientRounds = 8;
const patientPasses = 40;
const hopeless = 5;
const notConverged: Unsolved = { ok: false, reason: 'notConverged', details: {} };

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
  if (quick === null) return null;
  if (quick.reason === 'runaway') coolDown(work);
  const gentle = settleGently(work, start_kgPerS);
  if (gentle === null) return null;
  if (quick.reason !== 'notConverged') return quick;
  return gentle.reason === 'notConverged' ? settleInTurn(work, start_kgPerS) : gentle;
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
  if (quick === null) return null;
  if (quick.reason === 'runaway') coolDown(work);
  const gentle = settleGently(work, start_kgPerS);
  if (gentle === null) return null;
  return quick.reason === 'notConverged' ? gentle : quick;
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
    if (hottest_K(work) > (pass > patientPasses ? 1 : hopeless) * hottestMeaningful_K) return runaway(work);
    const share = pass < 100 ? 0.3 : 0.1;
    const before_K = work.exhaust_K;
    updateAir(work, share);
    work.moved_K = moved_K / share;
    // Where hardly a watt moves, metal may stand still long before the air is there.
    const behind_K = Math.abs(work.exhaust_K - before_K) / share;
    const enough_K = 1e-6 * (1 + hottestRise_K(work));
    if (pass > 3 && work.moved_K < enough_K && behind_K < 10 * enough_K)
      return hottest_K(work) > hottestMeaningful_K ? runaway(work) : null;
    if (!solveNetwork(work.path, work.flow, -1, 1e-11).converged) return notConverged;
  }
  return notConverged;
}

function runaway(work: Work): Unsolved {
  return { ok: false, reason: 'runaway', details: { T_K: Math.min(hottest_K(work), 1e6) } };
}

/** Everything as cold as the room again, for another way of settling. */
function coolDown(work: Work): void {
  const { T_K } = work.input.room;
  work.heat.network.rise_K.fill(0);
  work.plenum_K = T_K;
  work.entering_K = T_K;
  work.exhaust_K = T_K;
  work.gap_K = T_K;
  work.reversed = false;
  for (const air of [work.plenum, work.gap, work.exhaust, ...work.inSink])
    airProperties(air, T_K, work.p_Pa, work.moist);
  spreadAir(work);
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
    if (hottest_K(work) > (iteration > patientRounds ? 1 : hopeless) * hottestMeaningful_K)
      return runaway(work);
    updateAir(work);
    work.moved_K = remaining_K(moved_K, before_K);
    if (work.moved_K < enough_K && flowChange * warmth(work) < flowTolerance)
      return hottest_K(work) > hottestMeaningful_K ? runaway(work) : null;
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
    if (hottest_K(work) > hottestMeaningful_K) return runaway(work);
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

/** Scales the flows to the new one through the fan and settles the rest of the network under it. */
function imposeFlow(work: Work, massFlow_kgPerS: number): void {
  const { path, flow } = work;
  const scale = massFlow_kgPerS / Math.max(flow.massFlow[path.fanLink] as number, 1e-15);
  for (let i = 0; i < flow.massFlow.length; i++) flow.massFlow[i] = (flow.massFlow[i] as number) * scale;
  flow.massFlow[path.fanLink] = massFlow_kgPerS;
  solveNetwork(path, flow, path.fanLink);
}

/** Heat network at the present flows, steady. @returns largest change of a temperature, K; NaN where it has no answer */
export function heatStep(work: Work): number {
  const { network } = work.heat;
  setConductances(work, true);
  const before = work.before_K;
  before.set(network.rise_K);
  if (!solveHeatNetwork(network)) return Number.NaN;
  let moved = 0;
  const { judged } = work.heat.layout;
  for (let j = 0; j < judged.length; j++) {
    const i = judged[j] as number;
    const d = Math.abs((network.rise_K[i] as number) - (before[i] as number));
    if (d > moved) moved = d;
  }
  return moved;
}
