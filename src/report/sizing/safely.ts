import { type Dimension, dimensions, type UnitSystem, unitOf } from '../../units/dimensions.ts';
import { fromSI, toSI } from '../../units/unit.ts';
import type { Said } from '../amount.ts';
import { saidQuantity } from '../said.ts';

const digits = 3;
/** A value this close to a round one is that one. */
const hair = 1e-6;

/** A value as told, and in SI just what is told: what is read off and what is put into a design are the same. */
export interface ToldValue extends Said {
  readonly SI: number;
}

/** A value to three digits, rounded to the side on which the target is met. */
export function saidSafely(
  value: number,
  dimension: Dimension,
  system: UnitSystem,
  side: 'down' | 'up' | 'nearest',
): ToldValue {
  const unit = unitOf(dimension, dimensions[dimension][system]);
  const shown = fromSI(value, unit);
  const decimals = digits - 1 - Math.floor(Math.log10(Math.abs(shown) || 1));
  const steps = shown * 10 ** decimals;
  const nearest = Math.round(steps);
  const isRound = side === 'nearest' || Math.abs(steps - nearest) <= hair * Math.max(1, Math.abs(steps));
  const whole = isRound ? nearest : side === 'down' ? Math.floor(steps) : Math.ceil(steps);
  const SI = Number(toSI(Number((whole / 10 ** decimals).toPrecision(12)), unit).toPrecision(15));
  return { ...saidQuantity(SI, dimension, system, digits + 2), SI };
}
