import { allowedPower_W, allowedTemperature_K } from '../resistor/allowedPower_W.ts';
import type { SystemInput } from './input.ts';
import type { AirOutcome, HeatOutcome, Limit, LimitKey, LimitState, Verdict } from './outcome.ts';

/**
 * Every limit at its worst place: margin in kelvin, and the factor by which the load may still be multiplied at this
 * flow (rises over the entering air are proportional to the load, for the network is linear in the watts).
 */
export function judgeLimits(input: SystemInput, air: AirOutcome, heat: HeatOutcome, worstVolts: readonly number[]): Limit[] {
  const { limits, bond } = input;
  const limitsFound: (Limit | null)[] = [];
  const spare = limits.spareFactor;
  const base_K = heat.plenum_K;
  const temperature = (key: LimitKey, where: number | null, value: number, limit: number, source: string, confirm: boolean): Limit => {
    const loadFactor = value > base_K ? Math.max(0, (limit - base_K) / (value - base_K)) : null;
    const state = value > limit ? 'fails' : stateOf(loadFactor, spare);
    return { key, where, quantity: 'temperature', value, limit, margin_K: limit - value, loadFactor, state, source, confirm };
  };

  const live = heat.positions;
  limitsFound.push(worst(live.map((p) => temperature('film', p.index, p.film_K, part(input, p.index).zeroPowerAt_K, 'chipConvention', true))));
  limitsFound.push(worst(live.map((p) => derating(input, heat, p, spare))));
  limitsFound.push(worst(live.map((p) => ratedPower(input, p))));
  limitsFound.push(worst(live.map((p) => temperature('joint', p.index, p.joint_K, limits.joint_K, 'commonPractice', true))));
  limitsFound.push(
    worst(
      live.map((p) => {
        const limit = temperature('bond', p.index, p.bond_K, bond.serviceLimit_K, 'materialHandbook', true);
        return limit.state === 'holds' && p.bond_K > bond.glassTransition_K ? { ...limit, state: 'little' } : limit;
      }),
    ),
  );
  const plates = heat.sinks.flatMap((s) => (s ? [{ index: s.index, T_K: Math.max(s.before_K ?? 0, s.after_K ?? 0) }] : []));
  const sheetAndTouch = (key: LimitKey, limit_K: number, source: string) =>
    worst(plates.map((p) => temperature(key, p.index, p.T_K, limit_K, source, true)));
  if (limits.touchable) limitsFound.push(sheetAndTouch('touch', limits.touch_K, 'iec62368'));
  limitsFound.push(sheetAndTouch('sheet', limits.sheet_K, 'materialHandbook'));
  limitsFound.push(temperature('exhaust', null, heat.exhaust_K, limits.exhaust_K, 'commonPractice', true));
  limitsFound.push(
    worst(
      worstVolts.map((volts, index): Limit => {
        const limit = part(input, index).elementLimit_V;
        const loadFactor = volts > 0 ? (limit / volts) ** 2 : null;
        return { key: 'voltage', where: index, quantity: 'voltage', value: volts, limit, margin_K: null, loadFactor, state: volts > limit ? 'fails' : volts > 0.95 * limit ? 'little' : 'holds', source: 'chipConvention', confirm: true };
      }),
    ),
  );
  if (air.stallBelow_m3PerS !== null) limitsFound.push(stall(air, air.stallBelow_m3PerS));
  return limitsFound.filter((limit) => limit !== null).sort(byUrgency);
}

/** The worst of all limits decides. `limits` must be sorted, most urgent first, and is never empty. */
export function judge(limits: readonly Limit[]): Verdict {
  const first = limits[0] as Limit;
  return { state: first.state, limit: first };
}

function part(input: SystemInput, index: number) {
  return (input.positions[index] as SystemInput['positions'][number]).part;
}

/** Derating line over terminals or air: margin to the temperature where these watts are just allowed. */
function derating(input: SystemInput, heat: HeatOutcome, p: HeatOutcome['positions'][number], spare: number): Limit | null {
  const chip = part(input, p.index);
  if (chip.deratedBy === 'film' || p.power_W <= 0) return null;
  const T_K = chip.deratedBy === 'terminals' ? p.joint_K : heat.plenum_K;
  const limit = allowedTemperature_K(Math.min(p.power_W, chip.rated_W), chip.rated_W, chip.fullPowerUpTo_K, chip.zeroPowerAt_K);
  const slope_KPerLoad = (p.power_W / chip.rated_W) * (chip.zeroPowerAt_K - chip.fullPowerUpTo_K);
  const rise_K = Math.max(0, T_K - heat.plenum_K);
  const loadFactor = Math.max(0, (chip.zeroPowerAt_K - heat.plenum_K) / (slope_KPerLoad + rise_K));
  const allowed = T_K <= limit && allowedPower_W(T_K, chip.rated_W, chip.fullPowerUpTo_K, chip.zeroPowerAt_K) > 0;
  return {
    key: 'derating', where: p.index, quantity: 'temperature', value: T_K, limit, margin_K: limit - T_K, loadFactor,
    state: allowed ? stateOf(loadFactor, spare) : 'fails', source: 'chipConvention', confirm: true,
  };
}

/** Rated power itself, for parts whose maker derates by something outside the part. */
function ratedPower(input: SystemInput, p: HeatOutcome['positions'][number]): Limit | null {
  const chip = part(input, p.index);
  if (chip.deratedBy === 'film' || p.power_W <= 0) return null;
  const loadFactor = chip.rated_W / p.power_W;
  // Rated power is the maker's own figure with the maker's own reserve: reaching it is allowed.
  const state: LimitState = loadFactor < 1 - 1e-12 ? 'fails' : 'holds';
  return { key: 'ratedPower', where: p.index, quantity: 'power', value: p.power_W, limit: chip.rated_W, margin_K: null, loadFactor, state, source: 'chipConvention', confirm: true };
}

/** A fan left of its dip is loud, unsteady, and may drop to the lower flow at any knock. */
function stall(air: AirOutcome, edge: number): Limit {
  const several = air.intersections.filter((point) => point.stable).length > 1;
  const state: LimitState = air.flow_m3PerS < 1.1 * edge || several ? 'little' : 'holds';
  return { key: 'stall', where: null, quantity: 'flow', value: air.flow_m3PerS, limit: edge, margin_K: null, loadFactor: null, state, source: 'commonPractice', confirm: false };
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
