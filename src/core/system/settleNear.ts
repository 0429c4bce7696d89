import { airProperties } from '../air/airProperties.ts';
import { gradientStep, largestFlow } from '../airflow/network.ts';
import type { AirPath, PathLink } from './airPath.ts';
import { heatStep } from './settle.ts';
import { hottest_K, hottestMeaningful_K, updateAir } from './updateAir.ts';
import { spreadAir, type Work } from './work.ts';

/**
 * Temperatures may still move by this much: a millionth of a kelvin, far below what any study tells apart, and reached two
 * rounds before the billionth of the ordinary answer.
 */
const tolerance_K = 1e-6;
/** Flows may still move by this share of the largest before one more step, which squares it. */
const flowTolerance = 1e-6;
/** Without fans draught and warmth drive one another by and by, and say less about what is still to come. */
const stoppedShare = 1e-2;
/**
 * The first changes shrink faster than those after them, while the flows still fall into place: never take what remains for
 * less than this share of the last change.
 */
const leastShare = 0.03;
/** Changes that do not shrink by half may go on for long: each then counts as so many. */
const creeping = 1000;
/** What has not settled by then is no neighbour. */
const mostRounds = 30;

/**
 * Settles `work` from the flows and temperatures of `near`, a settled box of other measures.
 * @returns false where it does not settle that way, or as another kind of flow; `work` is of no use then
 */
export function settleNear(work: Work, near: Work): boolean {
  if (!takeFlows(work, near) || !takeWarmth(work, near)) return false;
  // The first change is the largest: a second step of the flows squares what is left of it, and often saves a round.
  flowStep(work);
  const enough = work.path.fans ? 1 : stoppedShare;
  let before_K = Number.POSITIVE_INFINITY;
  let flowBefore = Number.POSITIVE_INFINITY;
  for (let round = 1; round <= mostRounds; round++) {
    work.iterations = round;
    const flowChange = flowStep(work);
    const entering_K = work.entering_K;
    // Heat network and air together: rises over the entering air, and that air itself.
    const moved_K = Math.max(heatStep(work), Math.abs(work.entering_K - entering_K));
    if (!Number.isFinite(flowChange + moved_K)) return false;
    updateAir(work);
    work.moved_K = remaining(moved_K, before_K);
    if (work.moved_K < enough * tolerance_K && remaining(flowChange, flowBefore) < enough * flowTolerance)
      return Number.isFinite(flowStep(work)) && hottest_K(work) < hottestMeaningful_K && sameWay(work, near);
    before_K = moved_K;
    flowBefore = flowChange;
  }
  return false;
}

/** What a sequence of changes still has to go, by the last two. */
function remaining(change: number, before: number): number {
  if (!(change < 0.5 * before)) return creeping * change;
  return Math.max(change * (change / (before - change)), leastShare * change);
}

/** @returns largest change of a flow over the largest flow */
function flowStep({ path, flow }: Work): number {
  return gradientStep(path, flow, -1, 1) / (largestFlow(flow) + 1e-15);
}

function sameWay(work: Work, near: Work): boolean {
  const flow = work.flow.massFlow[work.path.fanLink] as number;
  return !(flow * (near.flow.massFlow[near.path.fanLink] as number) < 0);
}

/**
 * Flows and heads as they stand in `near`, link by link. Only the slits between sinks may be of another number, for equal ones
 * are one link: those share their air anew by their areas.
 */
function takeFlows(work: Work, near: Work): boolean {
  if (work.path.nodeCount !== near.path.nodeCount) return false;
  const mine = work.path.links;
  const theirs = near.path.links;
  const between = slits(near.path, near.flow.massFlow);
  const { area_m2 } = slits(work.path);
  let from = 0;
  for (let i = 0; i < mine.length; i++) {
    const link = mine[i] as PathLink;
    if (isSlit(link)) {
      work.flow.massFlow[i] = (between.massFlow * link.area_m2) / area_m2;
      continue;
    }
    while (from < theirs.length && isSlit(theirs[from] as PathLink)) from++;
    if (from === theirs.length) return false;
    work.flow.massFlow[i] = near.flow.massFlow[from] as number;
    work.flow.drop[i] = near.flow.drop[from] as number;
    from++;
  }
  work.flow.head.set(near.flow.head);
  return true;
}

function isSlit({ passage }: PathLink): boolean {
  return passage?.kind === 'between';
}

function slits({ links }: AirPath, flows?: Float64Array): { area_m2: number; massFlow: number } {
  let area_m2 = 0;
  let massFlow = 0;
  for (let i = 0; i < links.length; i++) {
    const link = links[i] as PathLink;
    if (!isSlit(link)) continue;
    area_m2 += link.area_m2;
    massFlow += flows?.[i] ?? 0;
  }
  return { area_m2, massFlow };
}

/** Rises, walls and air as warm over the room as in `near`. */
function takeWarmth(work: Work, near: Work): boolean {
  const { network } = work.heat;
  if (network.nodeCount !== near.heat.network.nodeCount) return false;
  network.rise_K.set(near.heat.network.rise_K);
  const shift_K = work.input.room.T_K - near.input.room.T_K;
  const { p_Pa, moist } = work;
  work.plenum_K = near.plenum_K + shift_K;
  work.entering_K = near.entering_K + shift_K;
  work.exhaust_K = near.exhaust_K + shift_K;
  work.gap_K = near.gap_K + shift_K;
  work.cp_JPerKgK = near.cp_JPerKgK;
  work.carried_W = near.carried_W;
  work.shell_W = near.shell_W;
  work.reversed = near.reversed;
  airProperties(work.plenum, work.plenum_K, p_Pa, moist);
  airProperties(work.exhaust, work.exhaust_K, p_Pa, moist);
  airProperties(work.gap, work.gap_K, p_Pa, moist);
  for (let s = 0; s < work.inSink.length; s++) {
    const air = work.inSink[s];
    const theirs = near.inSink[s];
    if (!air || !theirs) return false;
    airProperties(air, theirs.T_K + shift_K, p_Pa, moist);
    const shell = work.shellHeat[s];
    if (shell) shell.outerShare = near.shellHeat[s]?.outerShare ?? shell.outerShare;
  }
  spreadAir(work);
  return true;
}
