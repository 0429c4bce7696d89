import { type Dimension, dimensions, type UnitSystem, unitOf as unitNamed } from '../units/dimensions.ts';
import { formatNumber } from '../units/formatNumber.ts';
import { formatQuantity } from '../units/formatQuantity.ts';
import { fromSI } from '../units/unit.ts';

export type { Dimension, UnitSystem };

/** Significant digits of a computed quantity; what somebody typed is shown with more. */
const computedDigits = 3;

/** Symbol of the unit in which a reader of this system sees such a quantity. */
export function unitOf(dimension: Dimension, system: UnitSystem): string {
  return shownUnit(dimension, system).symbol;
}

/** An SI value in the reader's unit, as a number for a chart. */
export function amount(value: number, dimension: Dimension, system: UnitSystem): number {
  return fromSI(value, shownUnit(dimension, system));
}

/** An SI value in the reader's unit, in words. */
export function quantity(value: number, dimension: Dimension, system: UnitSystem, digits?: number): string {
  return formatQuantity(
    value,
    dimension,
    dimensions[dimension][system],
    digits === undefined ? {} : { digits },
  );
}

export function plain(value: number, digits = computedDigits): string {
  return formatNumber(value, digits);
}

function shownUnit(dimension: Dimension, system: UnitSystem) {
  return unitNamed(dimension, dimensions[dimension][system]);
}
