import { card as derating } from '../../resistor/allowedPower_W.ts';
import type { PartInput } from '../input.ts';
import type { Limit } from '../outcome.ts';
import {
  allowedBySlope,
  loadFactorOfRise,
  loadFactorOfSlope,
  loadFactorOfVolts,
  loadFactorOfWatts,
  marginKelvin,
} from './balances/limitBalances.ts';
import type { Place, Quantity } from './book.ts';
import type { Telling } from './telling.ts';
import type { LoadTold } from './tellLoad.ts';
import type { TemperaturesTold } from './tellTemperatures.ts';

/** What limits are held against. */
export interface JudgedTold {
  readonly load: LoadTold;
  readonly temperatures: TemperaturesTold;
  readonly pulse_K: Quantity | null;
}

/** Every limit: its value, its margin, and the load that it lets pass. */
export function tellLimits(t: Telling, limits: readonly Limit[], judged: JudgedTold): void {
  for (const limit of limits) {
    const value = judgedValue(t, limit, judged);
    if (!value) continue;
    t.figure('limit', limit.key, value);
    const place = t.at('limit', undefined, limit.key);
    const allowed = limit.key === 'derating' ? allowedOf(t, limit, judged, place) : limit.limit;
    if (limit.margin_K !== null) {
      const given = { limit_K: allowed, value_K: value };
      t.figure('margin', limit.key, t.balance(marginKelvin, place, given, limit.margin_K));
    }
    const also = limit.key === 'derating' ? [powerAllowed(t, limit, value, place)] : [];
    const factor = limit.loadFactor === null ? null : factorOf(t, limit, judged, { value, place });
    if (factor) t.figure('loadFactor', limit.key, factor, also);
  }
}

function judgedValue(t: Telling, limit: Limit, { load, temperatures, pulse_K }: JudgedTold): Quantity | null {
  const at = limit.where ?? 0;
  switch (limit.key) {
    case 'film':
      return temperatures.film_K[at] ?? null;
    case 'pulse':
      return pulse_K;
    case 'joint':
      return temperatures.joint_K[at] ?? null;
    case 'bond':
      return temperatures.bond_K[at] ?? null;
    case 'derating':
      return partAt(t, at).deratedBy === 'terminals'
        ? (temperatures.joint_K[at] ?? null)
        : temperatures.entering_K;
    case 'touch':
    case 'sheet':
      return temperatures.plate_K[at] ?? null;
    case 'wall':
      return temperatures.outside_K[at] ?? null;
    case 'exhaust':
      return temperatures.exhaust_K;
    case 'voltage':
      return load.voltage_V[at] ?? null;
    case 'ratedPower':
      return load.power_W[at] ?? null;
    case 'sound':
      return figureOf(t, 'sound');
    case 'stall':
      return figureOf(t, 'flow');
  }
}

/** A figure of the whole box that was told already. */
function figureOf(t: Telling, kind: string): Quantity | null {
  const figure = t.book.figures.findLast((each) => each.kind === kind && each.stopped === t.stopped);
  const from = figure?.steps[figure.steps.length - 1];
  return figure && from !== undefined ? { value: figure.value, from } : null;
}

function partAt(t: Telling, index: number): PartInput {
  return (t.work.input.positions[index] as Telling['work']['input']['positions'][number]).part;
}

/** Where the derating line lets these watts go, and what it allows at the present temperature. */
function allowedOf(t: Telling, limit: Limit, { load }: JudgedTold, place: Place): Quantity {
  const part = partAt(t, limit.where ?? 0);
  const given = {
    zero_K: part.zeroPowerAt_K,
    power_W: load.power_W[limit.where ?? 0] ?? 0,
    rated_W: part.rated_W,
    full_K: part.fullPowerUpTo_K,
  };
  return t.balance(allowedBySlope, place, given, limit.limit);
}

/** Watts that the maker allows at the present temperature. */
function powerAllowed(t: Telling, limit: Limit, T_K: Quantity, place: Place): Quantity {
  const { rated_W, fullPowerUpTo_K, zeroPowerAt_K } = partAt(t, limit.where ?? 0);
  return t.card(derating, place, { T_K, rated_W, fullPowerUpTo_K, zeroPowerAt_K });
}

function factorOf(
  t: Telling,
  limit: Limit,
  { load, temperatures }: JudgedTold,
  { value, place }: { readonly value: Quantity; readonly place: Place },
): Quantity {
  const known = limit.loadFactor as number;
  const { entering_K } = temperatures;
  switch (limit.key) {
    case 'voltage':
      return t.balance(loadFactorOfVolts, place, { limit_V: limit.limit, value_V: value }, known);
    case 'ratedPower':
      return t.balance(loadFactorOfWatts, place, { rated_W: limit.limit, power_W: value }, known);
    case 'derating': {
      const { rated_W, zeroPowerAt_K, fullPowerUpTo_K } = partAt(t, limit.where ?? 0);
      const slope = {
        zero_K: zeroPowerAt_K,
        entering_K,
        power_W: load.power_W[limit.where ?? 0] ?? 0,
        rated_W,
        full_K: fullPowerUpTo_K,
        value_K: value,
      };
      return t.balance(loadFactorOfSlope, place, slope, known);
    }
    default:
      return t.balance(loadFactorOfRise, place, { limit_K: limit.limit, entering_K, value_K: value }, known);
  }
}
