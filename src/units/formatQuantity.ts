import { type Dimension, dimensions, type Unit, unitOf } from './dimensions.ts';
import { formatNumber } from './formatNumber.ts';
import { invariant } from './invariant.ts';
import { fromSI } from './unit.ts';

export interface FormatOptions {
  /** Significant digits, where the dimension's own are not wanted. */
  readonly digits?: number;
}

/** An SI value to read, in this unit: "1.6 mm", "25 °C", `0.0625"`. */
export function formatQuantity(
  value: number,
  dimension: Dimension,
  unit: string,
  options: FormatOptions = {},
): string {
  return `${formatAmount(value, dimension, unit, options)}${withSpace(unitOf(dimension, unit))}`;
}

/** The number alone, for columns and ranges that say their unit once. */
export function formatAmount(
  value: number,
  dimension: Dimension,
  unit: string,
  options: FormatOptions = {},
): string {
  invariant(Number.isFinite(value), `${value} is no ${dimension}`);
  const info = dimensions[dimension];
  return formatNumber(fromSI(value, unitOf(dimension, unit)), options.digits ?? info.digits, info.decimals);
}

function withSpace({ symbol, attached }: Unit): string {
  return symbol === '' || attached ? symbol : `\u202f${symbol}`;
}
