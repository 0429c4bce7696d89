import { type Dimension, unitOf } from './dimensions.ts';
import { invariant } from './invariant.ts';
import { fromSI, toSI } from './unit.ts';

/** Relative deviation that is float dust and not somebody's digit. */
const dust = 1e-12;

/**
 * An SI value as a bare number in this unit, to be edited: the shortest decimal text that parses back to the same value
 * within a relative deviation (1e-12 unless told), with a plain hyphen for minus.
 */
export function editText(value: number, dimension: Dimension, unit: string, within = dust): string {
  const shown = unitOf(dimension, unit);
  const exact = fromSI(value, shown);
  invariant(Number.isFinite(exact), `${value} cannot be edited in ${dimension} ${unit}`);
  // Where the unit has a zero of its own, what is left of it (-6e-14 °F) has digits like any other number.
  if (Math.abs(toSI(0, shown) - value) <= dust * Math.abs(value)) return '0';
  for (let digits = 1; digits < 17; digits++) {
    const rounded = Number(exact.toPrecision(digits));
    if (Math.abs(toSI(rounded, shown) - value) <= within * Math.abs(value)) return String(rounded + 0);
  }
  return String(exact + 0);
}
