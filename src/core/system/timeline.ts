import { gradientStep, solveNetwork } from '../airflow/network.ts';
import { createMarch, type March, marchStep, stored_J } from '../heat/march.ts';
import { solveHeatNetwork, solveHeatStep } from '../heat/network.ts';
import { evaluatePchip, preparePchip } from '../solve/pchip.ts';
import { heatCapacities_JPerK } from './capacities.ts';
import { setConductances } from './conductances.ts';
import { describeHeat } from './describeOutcome.ts';
import { fansStopped, ordinaryRun, type SystemInput } from './input.ts';
import { type JudgedAir, judgeLimits } from './limits.ts';
import { meanPlate_K } from './meanPlate_K.ts';
import type { LimitKey } from './outcome.ts';
import { draughtStart } from './settle.ts';
import { settleSystem } from './solveSystem.ts';
import { hottestMeaningful_K, updateAir } from './updateAir.ts';
import { prepareWork, type Work } from './work.ts';

/** Temperatures of the box at one moment. */
export interface TimePoint {
  readonly time_s: number;
  /** Hottest film, joint, bond, plate, outside of a wall; air that leaves. */
  readonly film_K: number;
  readonly joint_K: number;
  readonly bond_K: number;
  readonly plate_K: number;
  readonly outside_K: number;
  readonly exhaust_K: number;
  /** Of every position. */
  readonly films_K: readonly number[];
  readonly joints_K: readonly number[];
  /** Of every sink: mean of its plates, outside of the wall beside it; `null` where there is none. */
  readonly sinks_K: readonly (number | null)[];
  readonly outsides_K: readonly (number | null)[];
  readonly flow_m3PerS: number;
  /** Kelvin to spare of every limit that is a temperature. */
  readonly margins_K: Readonly<Partial<Record<LimitKey, number>>>;
}

export interface Timeline {
  readonly points: readonly TimePoint[];
  /** Whether temperatures stood still at the end; they grew beyond all bounds where not, or the horizon was too near. */
  readonly settled: boolean;
  /** Joules put in, carried off and kept, and by how much they disagree, relative to those put in. */
  readonly energy: {
    readonly put_J: number;
    readonly left_J: number;
    readonly stored_J: number;
    readonly imbalance: number;
  };
}

export interface TimelineOptions {
  /** Longest time looked at. */
  readonly horizon_s: number;
  /** Error of one step that is let pass, before its correction. */
  readonly tolerance_K: number;
  /** Stop once nothing moves any more. */
  readonly untilSettled: boolean;
  /** Moments that get a point of their own, s: stepped onto, not read off between two others. */
  readonly at_s?: readonly number[];
}

export const ordinaryTimeline: TimelineOptions = {
  horizon_s: 6 * 3600,
  tolerance_K: 0.25,
  untilSettled: true,
};

/**
 * All fans stop at once at full load, from the temperatures of the running box. The draught takes over from the first moment,
 * flows follow the temperatures as these rise.
 * @returns `null` where the running box has no answer to start from
 */
export function afterFanStop(input: SystemInput, options = ordinaryTimeline): Timeline | null {
  const running = settleSystem(input, ordinaryRun);
  if (!running.outcome.ok) return null;
  const work = prepareWork(input, fansStopped);
  const { rise_K } = work.heat.network;
  const shift_K = running.work.entering_K - work.entering_K;
  running.work.heat.network.rise_K.forEach((rise, node) => {
    rise_K[node] = rise + shift_K;
  });
  work.answers = false;
  draughtStart(work);
  return run(work, options);
}

/**
 * The load comes on with everything at the temperature of the room; with the fans running, or at a stand, where the first air
 * moves as the settled box would move it and slows down to what little warmth there is.
 * @returns `null` without an answer to head for
 */
export function warmUp(input: SystemInput, options = ordinaryTimeline, ran = ordinaryRun): Timeline | null {
  const { work, outcome } = settleSystem(input, ran);
  if (!outcome.ok) return null;
  work.answers = false;
  work.heat.network.rise_K.fill(input.room.T_K - work.entering_K);
  updateAir(work);
  solveNetwork(work.path, work.flow, -1, 1e-9);
  // Cold air takes the fans' heat at another flow: the rises begin over the air that enters then.
  setConductances(work, false);
  work.heat.network.rise_K.fill(input.room.T_K - work.entering_K);
  return run(work, options);
}

function run(work: Work, options: TimelineOptions): Timeline {
  const { network } = work.heat;
  const march = createMarch(network, heatCapacities_JPerK(work.input, work.bank, work.heat), 0.25);
  let share = 1;
  const refresh = (rise_K: Float64Array) => {
    // Where air goes round inside the box, flows and air may overshoot each other for ever, however short the step.
    if (march.step_s < tooShort * march.time_s) share = overshooting;
    network.rise_K.set(rise_K);
    updateAir(work, share);
    gradientStep(work.path, work.flow, -1, 1);
    setConductances(work, false);
  };
  // Air holds nothing: it has the temperatures that metal and flow give it before the first moment is over.
  refresh(march.rise_K);
  for (let round = 0; round < 6; round++) {
    solveHeatStep(network, march.capacity_JPerK, march.rise_K, 1e-6);
    march.rise_K.set(network.rise_K);
    refresh(march.rise_K);
  }
  const points = [pointOf(work, march)];
  const start_J = stored_J(march);
  let settled = false;
  const stops_s = [...(options.at_s ?? [])].sort((a, b) => a - b);
  while (march.time_s < options.horizon_s && !settled) {
    const next_s = stops_s.find((stop_s) => stop_s > march.time_s) ?? options.horizon_s;
    const end_s = Math.min(next_s, options.horizon_s);
    const step_s = Math.min(march.step_s, end_s - march.time_s);
    if (!marchStep(march, end_s, options.tolerance_K, refresh)) break;
    const point = pointOf(work, march);
    points.push(point);
    if (!(point.film_K < hottestMeaningful_K) || points.length > mostPoints) break;
    settled = options.untilSettled && step_s > 5 && distance_K(work, march) < 0.05;
  }
  const kept_J = stored_J(march) - start_J;
  return {
    points,
    settled,
    energy: {
      put_J: march.put_J,
      left_J: march.left_J,
      stored_J: kept_J,
      imbalance:
        Math.abs(march.put_J - march.left_J - kept_J) /
        Math.max(Math.abs(march.put_J), Math.abs(march.left_J), Math.abs(kept_J), 1e-12),
    },
  };
}

/** No course of temperatures needs more; one that does has lost its way. */
const mostPoints = 2000;

/** A step so short beside the time gone by is no longer about the error of the step. */
const tooShort = 1e-5;
/** From then on the air follows by this share of the way. */
const overshooting = 0.4;

/** How far any temperature is from where it would settle at the present conductances. */
function distance_K(work: Work, { rise_K }: March): number {
  const { network } = work.heat;
  if (!solveHeatNetwork(network)) return Number.POSITIVE_INFINITY;
  let most_K = 0;
  for (let i = 0; i < rise_K.length; i++)
    most_K = Math.max(most_K, Math.abs((network.rise_K[i] as number) - (rise_K[i] as number)));
  network.rise_K.set(rise_K);
  return most_K;
}

const noJudgedAir: JudgedAir = {
  flow_m3PerS: 0,
  intersections: [],
  stallBelow_m3PerS: null,
  sound_dBA: null,
};

function pointOf(work: Work, { time_s }: March): TimePoint {
  const heat = describeHeat(work);
  const margins_K: Partial<Record<LimitKey, number>> = {};
  for (const { key, margin_K } of judgeLimits(work.input, noJudgedAir, heat, work.load.voltage_V))
    if (margin_K !== null) margins_K[key] = margin_K;
  const most = (values: readonly number[]) => values.reduce((high, value) => Math.max(high, value), 0);
  return {
    time_s,
    film_K: most(heat.positions.map((p) => p.film_K)),
    joint_K: most(heat.positions.map((p) => p.joint_K)),
    bond_K: most(heat.positions.map((p) => p.bond_K)),
    plate_K: most(heat.sinks.map((sink) => Math.max(sink?.before_K ?? 0, sink?.after_K ?? 0))),
    outside_K: most(heat.sinks.map((sink) => sink?.outside_K ?? 0)),
    exhaust_K: work.exhaust_K,
    films_K: heat.positions.map((p) => p.film_K),
    joints_K: heat.positions.map((p) => p.joint_K),
    sinks_K: heat.sinks.map(meanPlate_K),
    outsides_K: heat.sinks.map((sink) => sink?.outside_K ?? null),
    flow_m3PerS: (work.flow.massFlow[work.path.fanLink] as number) / work.room.rho_kgPerM3,
    margins_K,
  };
}

/** A limit and the moment it is reached; `null` where it never is. */
export interface Reached {
  readonly key: LimitKey;
  readonly time_s: number | null;
}

/** When each limit is first reached, soonest first; those never reached last. */
export function limitTimes({ points }: Timeline): Reached[] {
  const keys = Object.keys(points[0]?.margins_K ?? {}) as LimitKey[];
  return keys
    .map((key) => ({ key, time_s: crossing_s(points, (point) => point.margins_K[key] ?? 0) }))
    .sort((a, b) => (a.time_s ?? Number.POSITIVE_INFINITY) - (b.time_s ?? Number.POSITIVE_INFINITY));
}

const pair = new Float64Array(2);

/** First moment at which `margin` falls below nil, between points on a monotone curve through them. */
export function crossing_s(
  points: readonly TimePoint[],
  margin: (point: TimePoint) => number,
): number | null {
  const values = points.map(margin);
  const at = values.findIndex((value) => value < 0);
  if (at <= 0) return at === 0 ? 0 : null;
  const curve = preparePchip(
    points.map(({ time_s }) => time_s),
    values,
  );
  let low = (points[at - 1] as TimePoint).time_s;
  let high = (points[at] as TimePoint).time_s;
  for (let i = 0; i < 50; i++) {
    const middle = 0.5 * (low + high);
    evaluatePchip(curve, middle, pair);
    if ((pair[0] as number) < 0) high = middle;
    else low = middle;
  }
  return 0.5 * (low + high);
}
