import { allowedPower_W, allowedTemperature_K } from '../resistor/allowedPower_W.ts';
import type { SourceKey } from '../sources.ts';
import type { PartInput, SystemInput } from './input.ts';
import type {
  AirOutcome,
  HeatOutcome,
  Limit,
  LimitKey,
  LimitState,
  PositionOutcome,
  PulseOutcome,
  SinkOutcome,
  Verdict,
} from './outcome.ts';

/** What of the air has limits of its own. */
export type JudgedAir = Pick<AirOutcome, 'flow_m3PerS' | 'intersections' | 'stallBelow_m3PerS' | 'sound_dBA'>;

/**
 * Every limit at its worst place: margin in kelvin, and the factor by which the load may still be multiplied at this
 * flow (rises over the entering air are proportional to the load, for the network is linear in the watts). Without fans more
 * watts draw more air, so that it errs to the safe side there.
 */
export function judgeLimits(
  input: SystemInput,
  air: JudgedAir,
  heat: HeatOutcome,
  worstVolts: readonly number[],
  pulse: PulseOutcome | null = null,
): Limit[] {
  const { limits, bond, positions } = input;
  const { spareFactor: spare } = limits;
  const at = heat.positions;
  const found: (Limit | null)[] = [];
  const temperature = (
    key: LimitKey,
    where: number | null,
    value: number,
    limit: number,
    source: SourceKey,
  ) => temperatureLimit(key, where, value, limit, source, heat.entering_K, spare);

  const film = worstIndex(at.length, (i) => urgency(heat, filmOf(at[i]), partAt(positions, i).zeroPowerAt_K));
  found.push(
    temperature('film', film, filmOf(at[film]), partAt(positions, film).zeroPowerAt_K, 'chipConvention'),
  );
  if (pulse) {
    const { zeroPowerAt_K } = partAt(positions, pulse.position);
    found.push(temperature('pulse', pulse.position, pulse.peak_K, zeroPowerAt_K, 'chipConvention'));
  }
  found.push(worst(at.map((p) => derating(partAt(positions, p.index), heat, p, spare))));
  found.push(worst(at.map((p) => ratedPower(partAt(positions, p.index), p))));
  const joint = worstIndex(at.length, (i) => at[i]?.joint_K ?? 0);
  found.push(temperature('joint', joint, at[joint]?.joint_K ?? 0, limits.joint_K, 'commonPractice'));
  found.push(bondLimit(at, bond, temperature));
  const plate = worstIndex(heat.sinks.length, (s) => plateOf(heat.sinks[s]));
  const plate_K = plateOf(heat.sinks[plate]);
  const wall = worstIndex(heat.sinks.length, (s) => heat.sinks[s]?.outside_K ?? 0);
  if (plate_K > 0) {
    const outside_K = heat.sinks[wall]?.outside_K ?? 0;
    found.push(temperature('wall', wall, outside_K, limits.wall_K, 'iec62368'));
    if (limits.touchable) found.push(temperature('touch', plate, plate_K, limits.touch_K, 'iec62368'));
    found.push(temperature('sheet', plate, plate_K, limits.sheet_K, 'materialHandbook'));
  }
  found.push(temperature('exhaust', null, heat.exhaust_K, limits.exhaust_K, 'commonPractice'));
  const volts = worstIndex(
    worstVolts.length,
    (i) => (worstVolts[i] ?? 0) / partAt(positions, i).elementLimit_V,
  );
  found.push(voltage(volts, worstVolts[volts] ?? 0, partAt(positions, volts).elementLimit_V));
  if (limits.soundJudged && air.sound_dBA !== null) found.push(sound(air.sound_dBA, limits.sound_dBA));
  if (air.stallBelow_m3PerS !== null) found.push(stall(air, air.stallBelow_m3PerS));
  return found.filter((limit) => limit !== null).sort(byUrgency);
}

function temperatureLimit(
  key: LimitKey,
  where: number | null,
  value: number,
  limit: number,
  source: SourceKey,
  base_K: number,
  spare: number,
): Limit {
  const loadFactor = value > base_K ? Math.max(0, (limit - base_K) / (value - base_K)) : null;
  const state = value > limit ? 'fails' : stateOf(loadFactor, spare);
  return {
    key,
    where,
    quantity: 'temperature',
    value,
    limit,
    margin_K: limit - value,
    loadFactor,
    state,
    source,
    confirm: true,
  };
}

/** Share of the way from the entering air to the limit that is used up; beyond one it fails. */
function urgency(heat: HeatOutcome, value: number, limit: number): number {
  return limit > heat.entering_K ? (value - heat.entering_K) / (limit - heat.entering_K) : value - limit + 2;
}

/** The bond holds up to its service limit, but with little to spare once it is above its glass transition. */
function bondLimit(
  at: readonly PositionOutcome[],
  bond: SystemInput['bond'],
  temperature: (key: LimitKey, where: number, value: number, limit: number, source: SourceKey) => Limit,
): Limit {
  const hottest = worstIndex(at.length, (i) => at[i]?.bond_K ?? 0);
  const value = at[hottest]?.bond_K ?? 0;
  const limit = temperature('bond', hottest, value, bond.serviceLimit_K, 'materialHandbook');
  return limit.state === 'holds' && value > bond.glassTransition_K ? { ...limit, state: 'little' } : limit;
}

function voltage(where: number, volts: number, limit: number): Limit {
  const loadFactor = volts > 0 ? (limit / volts) ** 2 : null;
  const state = volts > limit ? 'fails' : volts > 0.95 * limit ? 'little' : 'holds';
  return {
    key: 'voltage',
    where,
    quantity: 'voltage',
    value: volts,
    limit,
    margin_K: null,
    loadFactor,
    state,
    source: 'chipConvention',
    confirm: true,
  };
}

/** Loud is no danger: it fails like any other limit all the same, since somebody set it. */
function sound(level_dBA: number, limit_dBA: number): Limit {
  return {
    key: 'sound',
    where: null,
    quantity: 'sound',
    value: level_dBA,
    limit: limit_dBA,
    margin_K: null,
    loadFactor: null,
    state: level_dBA > limit_dBA ? 'fails' : level_dBA > limit_dBA - 1 ? 'little' : 'holds',
    source: 'commonPractice',
    confirm: false,
  };
}

/** The worst of all limits decides. `limits` must be sorted, most urgent first, and is never empty. */
export function judge(limits: readonly Limit[]): Verdict {
  const first = limits[0] as Limit;
  return { state: first.state, limit: first };
}

function partAt(positions: SystemInput['positions'], index: number): PartInput {
  return (positions[index] as SystemInput['positions'][number]).part;
}

function filmOf(position: PositionOutcome | undefined): number {
  return position?.film_K ?? 0;
}

/** Hotter of the two plates of a sink; nil where there is no sink. */
function plateOf(sink: SinkOutcome | null | undefined): number {
  return sink ? Math.max(sink.before_K ?? 0, sink.after_K ?? 0) : 0;
}

/** Index where `measure` is largest; the first of equals. */
function worstIndex(count: number, measure: (index: number) => number): number {
  let at = 0;
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < count; i++) {
    const value = measure(i);
    if (value > most) {
      most = value;
      at = i;
    }
  }
  return at;
}

/** Derating line over terminals or air: margin to the temperature where these watts are just allowed. */
function derating(chip: PartInput, heat: HeatOutcome, p: PositionOutcome, spare: number): Limit | null {
  if (chip.deratedBy === 'film' || p.power_W <= 0) return null;
  const T_K = chip.deratedBy === 'terminals' ? p.joint_K : heat.entering_K;
  const limit = allowedTemperature_K(
    Math.min(p.power_W, chip.rated_W),
    chip.rated_W,
    chip.fullPowerUpTo_K,
    chip.zeroPowerAt_K,
  );
  const slope_KPerLoad = (p.power_W / chip.rated_W) * (chip.zeroPowerAt_K - chip.fullPowerUpTo_K);
  const rise_K = Math.max(0, T_K - heat.entering_K);
  const loadFactor = Math.max(0, (chip.zeroPowerAt_K - heat.entering_K) / (slope_KPerLoad + rise_K));
  const allowed =
    T_K <= limit && allowedPower_W(T_K, chip.rated_W, chip.fullPowerUpTo_K, chip.zeroPowerAt_K) > 0;
  return {
    key: 'derating',
    where: p.index,
    quantity: 'temperature',
    value: T_K,
    limit,
    margin_K: limit - T_K,
    loadFactor,
    state: allowed ? stateOf(loadFactor, spare) : 'fails',
    source: 'chipConvention',
    confirm: true,
  };
}

/** Rated power itself, for parts whose maker derates by something outside the part. */
function ratedPower(chip: PartInput, p: PositionOutcome): Limit | null {
  if (chip.deratedBy === 'film' || p.power_W <= 0) return null;
  const loadFactor = chip.rated_W / p.power_W;
  // Rated power is the maker's own figure with the maker's own reserve: reaching it is allowed.
  const state: LimitState = loadFactor < 1 - 1e-12 ? 'fails' : 'holds';
  return {
    key: 'ratedPower',
    where: p.index,
    quantity: 'power',
    value: p.power_W,
    limit: chip.rated_W,
    margin_K: null,
    loadFactor,
    state,
    source: 'chipConvention',
    confirm: true,
  };
}

/** A fan left of its dip is loud, unsteady, and may drop to the lower flow at any knock. */
function stall(air: JudgedAir, edge: number): Limit {
  const several = air.intersections.filter((point) => point.stable).length > 1;
  const state: LimitState = air.flow_m3PerS < 1.1 * edge || several ? 'little' : 'holds';
  return {
    key: 'stall',
    where: null,
    quantity: 'flow',
    value: air.flow_m3PerS,
    limit: edge,
    margin_K: null,
    loadFactor: null,
    state,
    source: 'commonPractice',
    confirm: false,
  };
}

function stateOf(loadFactor: number | null, spare: number): LimitState {
  if (loadFactor === null) return 'holds';
  return loadFactor < 1 ? 'fails' : loadFactor < spare ? 'little' : 'holds';
}

const rank: Record<LimitState, number> = { fails: 0, little: 1, holds: 2 };

function byUrgency(a: Limit, b: Limit): number {
  return rank[a.state] - rank[b.state] || (a.loadFactor ?? 1e9) - (b.loadFactor ?? 1e9);
}

function worst(limits: readonly (Limit | null)[]): Limit | null {
  let most: Limit | null = null;
  for (const limit of limits) {
    if (limit && (most === null || byUrgency(limit, most) < 0)) most = limit;
  }
  return most;
}
