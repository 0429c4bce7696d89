import { resistanceOver, selfHeatingDrift } from '../resistor/selfHeating.ts';
import type { SystemInput } from './input.ts';
import { ordinaryTimeline, type Timeline, type TimePoint, warmUp } from './timeline.ts';

/** Change of resistance that self-heating brings, and how long it takes to settle. */
export interface Drift {
  /** From a cold start in the room to the settled load, of every position. */
  readonly each: readonly number[];
  /** Of the whole string or set; `null` where the resistors are no set. */
  readonly whole: number | null;
  /** Until every position, and the whole, stays within the change that counts as settled. */
  readonly eachSettled_s: readonly number[];
  readonly wholeSettled_s: number | null;
  readonly warmUp: Timeline;
}

/**
 * Drift by self-heating, linear and quadratic, from the film temperatures of the warm-up. Time counts from a cold start at full
 * load with the fans running; "settled" is the last moment at which a resistance is farther from its final value than asked.
 * @returns `null` where the box has no answer
 */
export function driftOf(input: SystemInput): Drift | null {
  const { positions, limits, room } = input;
  const steepest = Math.max(1e-9, ...positions.map(({ part }) => Math.abs(part.tcr_perK)));
  const tolerance_K = Math.min(
    ordinaryTimeline.tolerance_K,
    Math.max(0.01, (0.3 * limits.settled) / steepest),
  );
  const timeline = warmUp(input, { ...ordinaryTimeline, tolerance_K });
  const last = timeline?.points.at(-1);
  if (!timeline || !last) return null;
  const each = positions.map(({ part }, r) =>
    selfHeatingDrift(room.T_K, last.films_K[r] as number, part.tcr_perK, part.tcr2_perK2),
  );
  const whole = wholeOf(input);
  const wholeCold_Ohm = whole?.(positions.map(() => room.T_K)) ?? null;
  const wholeHot_Ohm = whole?.(last.films_K) ?? null;
  const settledAt = (away: (point: TimePoint) => number) =>
    lastOutside_s(timeline.points, away, limits.settled);
  return {
    each,
    whole: wholeCold_Ohm && wholeHot_Ohm ? wholeHot_Ohm / wholeCold_Ohm - 1 : null,
    eachSettled_s: positions.map(({ part }, r) =>
      settledAt((point) =>
        selfHeatingDrift(
          last.films_K[r] as number,
          point.films_K[r] as number,
          part.tcr_perK,
          part.tcr2_perK2,
        ),
      ),
    ),
    wholeSettled_s:
      whole && wholeHot_Ohm ? settledAt((point) => whole(point.films_K) / wholeHot_Ohm - 1) : null,
    warmUp: timeline,
  };
}

/** Resistance of all that are on, by their film temperatures; `null` where they are no string and no set. */
function wholeOf({ load, positions }: SystemInput): ((films_K: readonly number[]) => number) | null {
  const on = positions.flatMap(({ part, on: isOn }, r) => (isOn ? [{ part, r }] : []));
  const own = (films_K: readonly number[]) =>
    on.map(
      ({ part, r }) => part.R_Ohm * resistanceOver(films_K[r] as number, part.tcr_perK, part.tcr2_perK2),
    );
  if (on.length === 0) return null;
  if (load.excitation === 'seriesVolts' || load.excitation === 'seriesAmps')
    return (films_K) => own(films_K).reduce((sum, R) => sum + R, 0);
  if (load.excitation === 'parallelVolts' || load.excitation === 'parallelAmps')
    return (films_K) => 1 / own(films_K).reduce((sum, R) => sum + 1 / R, 0);
  return null;
}

/** Last moment outside ±`within`, s, found between two points of a decay; nil where never outside. */
export function lastOutside_s(
  points: readonly TimePoint[],
  away: (point: TimePoint) => number,
  within: number,
): number {
  for (let i = points.length - 1; i >= 0; i--) {
    const point = points[i] as TimePoint;
    const size = Math.abs(away(point));
    if (size <= within) continue;
    const after = points[i + 1];
    if (!after) return point.time_s;
    // What is left decays: its logarithm is nearly straight.
    const next = Math.max(Math.abs(away(after)), 1e-12);
    const share = Math.log(size / within) / Math.log(size / next);
    return point.time_s + share * (after.time_s - point.time_s);
  }
  return 0;
}
