import { describeOutcome } from './describeOutcome.ts';
import { ordinaryRun, type Run, type SystemInput } from './input.ts';
import {
  fanLaw,
  fanPressureAt,
  freeFlow_m3PerS,
  operatingPoints,
  systemPressure,
} from './operatingPoints.ts';
import type { Intersection, Outcome, Unsolved } from './outcome.ts';
import { settle, settleInTurn, settleStopped } from './settle.ts';
import { prepareWork, spreadAir, type Work } from './work.ts';

/**
 * The whole answer for one fan box. Pure, deterministic, total: for any valid input an answer or a reason, never a
 * throw, never a number that is not finite. Air network (global gradient method) and heat network (direct) are iterated
 * together until temperatures stand still; every other intersection with the fan curve is found on the same network. With
 * its fans stopped the same networks run on warmth alone.
 */
export function solveSystem(input: SystemInput, run: Run = ordinaryRun): Outcome {
  return settleSystem(input, run).outcome;
}

/** The same with the settled networks, for what has to look inside. */
export function settleSystem(input: SystemInput, run: Run): { work: Work; outcome: Outcome } {
  const work = prepareWork(input, run);
  const settled = settleAll(work);
  return { work, outcome: settled.ok ? describeOutcome(work, settled.intersections) : settled };
}

/** Fan and system curve at the air temperatures of the answer, for charts. Pressures at evenly spaced flows. */
export interface Curves {
  readonly flow_m3PerS: readonly number[];
  readonly fan_Pa: readonly number[];
  readonly system_Pa: readonly number[];
}

/** @param points number of flows from zero to the fan's free delivery; `null` where the box has no answer */
export function systemCurves(input: SystemInput, points: number): Curves | null {
  const work = prepareWork(input, ordinaryRun);
  if (!settleAll(work).ok) return null;
  const system = systemPressure(work);
  const most = freeFlow_m3PerS(work);
  const flow_m3PerS = Array.from({ length: points }, (_, i) => (most * i) / (points - 1));
  return {
    flow_m3PerS,
    fan_Pa: flow_m3PerS.map((flow) => fanPressureAt(work, flow)),
    system_Pa: flow_m3PerS.map((flow) => (flow > 0 ? system(flow) : 0)),
  };
}

type Settled = { readonly ok: true; readonly intersections: readonly Intersection[] } | Unsolved;

/** What keeps a box from having an answer before anything is computed: watts without a way out, no fan that turns. */
export function hindrance({ heat, power_W, run, path, input }: Work): Unsolved | null {
  const stranded = heat.layout.stranded.find((r) => (power_W[r] as number) > 0);
  if (stranded !== undefined) return { ok: false, reason: 'noHeatPath', details: { position: stranded } };
  if (run.fans === 'stopped' || path.fans !== null) return null;
  const { supply_V, start_V } = input.fan;
  return { ok: false, reason: 'fanDoesNotStart', details: { supply_V, start_V } };
}

function settleAll(work: Work): Settled {
  const none = hindrance(work);
  if (none) return none;
  if (work.run.fans === 'stopped') return settleStopped(work) ?? { ok: true, intersections: [] };
  const law = fanLaw(work);
  spreadAir(work);
  const start = law.curve.isNonIncreasing ? 0.6 * freeFlow_m3PerS(work) : (stableStart(work) ?? -1);
  if (!(start > 0)) return { ok: false, reason: 'noOperatingPoint', details: {} };
  const problem = settle(work, start * work.room.rho_kgPerM3);
  if (problem) return problem;
  let intersections = operatingPoints(work);
  if (!runsAtUsed(work, intersections)) {
    // As the air warmed up, Newton slid to another intersection of a curve with a dip: bracket the right one instead.
    const again = settleInTurn(work, start * work.room.rho_kgPerM3);
    if (again) return again;
    intersections = operatingPoints(work);
    if (!runsAtUsed(work, intersections)) return { ok: false, reason: 'noOperatingPoint', details: {} };
  }
  return { ok: true, intersections };
}

/** With a dip in the fan's curve the start decides where Newton ends: begin on the stable intersection with most flow. */
function stableStart(work: Work): number | null {
  for (let i = 0; i < work.flow.massFlow.length; i++) {
    const link = work.path.links[i] as (typeof work.path.links)[number];
    work.flow.massFlow[i] = link.passage ? 1e-5 : 1e-4;
  }
  return operatingPoints(work).find((point) => point.used)?.flow_m3PerS ?? null;
}

/** Whether the settled flow is the intersection that is marked as used. */
export function runsAtUsed(work: Work, intersections: readonly Intersection[]): boolean {
  const used = intersections.find((point) => point.used);
  const flow_m3PerS = (work.flow.massFlow[work.path.fanLink] as number) / work.room.rho_kgPerM3;
  return used !== undefined && Math.abs(used.flow_m3PerS - flow_m3PerS) < 1e-6 * flow_m3PerS;
}
