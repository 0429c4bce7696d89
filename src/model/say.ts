import { type Dimension, dimensions, findUnit, type UnitSystem, unitOf } from '../units/dimensions.ts';
import { editText } from '../units/editText.ts';
import { formatAmount, formatQuantity } from '../units/formatQuantity.ts';
import { describeProblem, parseQuantity } from '../units/parseQuantity.ts';
import { dimensionOfName } from '../units/suffix.ts';

export type { Dimension, UnitSystem };

/** Inputs without a suffix are shares, shown in percent, but for these, which nobody says in percent. */
const plainNumbers = [
  'loss',
  'emissivity',
  'sheetEmissivity',
  'standingLoss',
  'spareFactor',
  'size',
  'bondFactor',
  'slotFactor',
  'fanFactor',
  'emissivityFactor',
];

/** What the last key of a path measures. */
export function dimensionOfKey(key: string): Dimension {
  return dimensionOfName(key) ?? (plainNumbers.includes(key) ? 'number' : 'ratio');
}

/** Key of the unit in which a quantity is shown and a bare number is taken, where nobody typed another. */
export function unitFor(dimension: Dimension, system: UnitSystem): string {
  return dimensions[dimension][system];
}

/** Symbol of a unit as printed; empty for a plain number, or for a unit that an older copy kept and this one lacks. */
export function unitSymbol(dimension: Dimension, unit: string): string {
  return findUnit(dimension, unit)?.symbol ?? '';
}

/** A value with its unit, in the digits worth reading. */
export function sayQuantity(value: number, dimension: Dimension, system: UnitSystem, unit?: string): string {
  return formatQuantity(value, dimension, known(dimension, system, unit));
}

/** Two values that bound something, the unit said once: "0.2 to 50 mm". */
export function sayRange(
  [low, high]: readonly [number, number],
  dimension: Dimension,
  system: UnitSystem,
  unit?: string,
): string {
  const shown = known(dimension, system, unit);
  return `${formatAmount(low, dimension, shown)} to ${formatQuantity(high, dimension, shown)}`;
}

/** More digits than this in a field come from a change of unit, not from anybody's hand. */
const mostDigits = 9;

/**
 * The value as somebody would type it in this unit, to the last digit that matters: 3 mm is 0.1181102 in. Shown only; a
 * field that nobody touches keeps its value to the last bit.
 */
export function editIn(value: number, dimension: Dimension, unit: string): string {
  const exact = editText(value, dimension, unit);
  const digits = exact.replace(/e.*$/, '').replace(/\D/g, '').replace(/^0+/, '').length;
  return digits > mostDigits ? editText(value, dimension, unit, 5e-7) : exact;
}

export type ParseResult =
  | { readonly ok: true; readonly value: number; readonly unit: string }
  | { readonly ok: false; readonly reason: string };

/** A text as typed → SI. A bare number is in `unit`, or in the unit of the system where there is none. */
export function parseIn(
  text: string,
  dimension: Dimension,
  unit: string | undefined,
  system: UnitSystem,
): ParseResult {
  const read = parseQuantity(text, dimension, known(dimension, system, unit));
  return read.ok
    ? { ok: true, value: read.value, unit: read.unit }
    : { ok: false, reason: describeProblem(read) };
}

function known(dimension: Dimension, system: UnitSystem, unit: string | undefined): string {
  if (unit !== undefined && findUnit(dimension, unit) !== null) return unit;
  return unitOf(dimension, unitFor(dimension, system)).key;
}
