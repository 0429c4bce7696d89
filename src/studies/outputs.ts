import type { Limit, LimitKey, LimitState, Outcome, Solved, Verdict } from '../core/system/outcome.ts';

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

/** What stands in for following films through pulses, which costs more than all the rest. */
export interface Pulsing {
  /** Rise of the hottest film at the end of a pulse over its rise at the mean load, from `pulseSwing`. */
  readonly swing: number;
  readonly spareFactor: number;
}

/**
 * @param pulsing where the load pulses and `outcome` was found without following them
 * @returns `null` where the box has no answer
 */
export function judgedOf(outcome: Outcome, pulsing: Pulsing | null = null): Judged | null {
  if (!outcome.ok) return null;
  const { air, heat, limits } = outcome;
  const swing = pulsing?.swing ?? 1;
  let loadFactor = mostLoad;
  let filmMargin_K = Number.POSITIVE_INFINITY;
  for (const limit of limits) {
    const peaks = limit.key === 'film' ? swing : 1;
    if (limit.loadFactor !== null) loadFactor = Math.min(loadFactor, limit.loadFactor / peaks);
    if (limit.key === 'film') filmMargin_K = limit.limit - peak_K(limit.value, heat.entering_K, swing);
  }
  const { positions, sinks } = heat;
  const film_K = positions[heat.hottest]?.film_K ?? heat.room_K;
  const verdict = pulsing ? pulsedVerdict(outcome, pulsing) : outcome.verdict;
  return {
    outputs: {
      film_K: peak_K(film_K, heat.entering_K, swing),
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

function peak_K(film_K: number, entering_K: number, swing: number): number {
  return swing === 1 ? film_K : entering_K + swing * (film_K - entering_K);
}

/** The verdict with the films' peaks held against their limit besides. */
function pulsedVerdict({ limits, verdict }: Solved, { swing, spareFactor }: Pulsing): Verdict {
  const film = limits.find(({ key }) => key === 'film');
  if (film === undefined || film.loadFactor === null) return verdict;
  const loadFactor = film.loadFactor / swing;
  const state: LimitState = loadFactor < 1 ? 'fails' : loadFactor < spareFactor ? 'little' : 'holds';
  const limit: Limit = { ...film, key: 'pulse', loadFactor, state };
  const isWorse = rank[state] < rank[verdict.state];
  const isSame = state === verdict.state && loadFactor < (verdict.limit.loadFactor ?? mostLoad);
  return isWorse || isSame ? { state, limit } : verdict;
}

const rank: Readonly<Record<LimitState, number>> = { fails: 0, little: 1, holds: 2 };

function most(values: readonly number[]): number {
  return values.reduce((a, b) => Math.max(a, b), 0);
}
