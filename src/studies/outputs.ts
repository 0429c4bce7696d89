import type { LimitKey, LimitState, Outcome } from '../core/system/outcome.ts';

/** The figures by which studies compare one design with another, in SI. */
export interface Outputs {
  readonly film_K: number;
  /** From the hottest film to what it may have. */
  readonly filmMargin_K: number;
  /** Least of all limits: the load may be multiplied by this before the first is met. Infinite loads count as 100. */
  readonly loadFactor: number;
  readonly flow_m3PerS: number;
  readonly fanPressure_Pa: number;
  /** Share of the fan's air that goes through fins. */
  readonly finShare: number;
  /** Nil where no fan turns. */
  readonly sound_dBA: number;
  readonly joint_K: number;
  readonly bond_K: number;
  /** Hottest plate of a sink. */
  readonly plate_K: number;
  readonly exhaust_K: number;
}

export type OutputKey = keyof Outputs;

export interface Judged {
  readonly outputs: Outputs;
  readonly state: LimitState;
  /** The limit that gives first. */
  readonly limit: LimitKey;
}

const mostLoad = 100;

/** @returns `null` where the box has no answer */
export function judgedOf(outcome: Outcome): Judged | null {
  if (!outcome.ok) return null;
  const { air, heat, limits, verdict } = outcome;
  let loadFactor = mostLoad;
  let filmMargin_K = Number.POSITIVE_INFINITY;
  for (const limit of limits) {
    if (limit.loadFactor !== null) loadFactor = Math.min(loadFactor, limit.loadFactor);
    if (limit.key === 'film') filmMargin_K = limit.margin_K ?? filmMargin_K;
  }
  const { positions, sinks } = heat;
  return {
    outputs: {
      film_K: positions[heat.hottest]?.film_K ?? heat.room_K,
      filmMargin_K: Number.isFinite(filmMargin_K) ? filmMargin_K : 0,
      loadFactor,
      flow_m3PerS: air.flow_m3PerS,
      fanPressure_Pa: air.fanPressure_Pa,
      finShare: air.share.fins,
      sound_dBA: air.sound_dBA ?? 0,
      joint_K: most(positions.map(({ joint_K }) => joint_K)),
      bond_K: most(positions.map(({ bond_K }) => bond_K)),
      plate_K: most(sinks.map((sink) => Math.max(sink?.before_K ?? 0, sink?.after_K ?? 0))),
      exhaust_K: heat.exhaust_K,
    },
    state: verdict.state,
    limit: verdict.limit.key,
  };
}

function most(values: readonly number[]): number {
  return values.reduce((a, b) => Math.max(a, b), 0);
}
