import { invariant } from './invariant.ts';

const narrowSpace = '\u202f';
const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/**
 * A number to read: so many significant digits, no trailing zeros, a true minus, digits from 10 000 on in groups, a
 * power of ten only where zeros would have to be counted.
 */
export function formatNumber(
  value: number,
  significantDigits: number,
  mostDecimals = Number.POSITIVE_INFINITY,
): string {
  invariant(Number.isFinite(value), `${value} cannot be shown`);
  const digits = Math.min(Math.max(Math.round(significantDigits), 1), 17);
  const rounded = round(Math.abs(value), digits, mostDecimals);
  const sign = value < 0 && rounded !== 0 ? '−' : '';
  return `${sign}${rounded !== 0 && (rounded < 1e-6 || rounded >= 1e15) ? withPower(rounded) : grouped(rounded)}`;
}

/** Rounds once, to whichever is coarser: twice would take 342.3045 by way of 342.305 to 342.31. */
function round(size: number, digits: number, mostDecimals: number): number {
  const decimals = digits - 1 - Number(size.toExponential(digits - 1).split('e')[1]);
  const rounded = Number(decimals > mostDecimals ? size.toFixed(mostDecimals) : size.toPrecision(digits));
  // The largest numbers of all round up to more than there is.
  return Number.isFinite(rounded) ? rounded : size;
}

function grouped(value: number): string {
  const [whole = '', decimals] = String(value).split('.');
  const groups = whole.length > 4 ? whole.replace(/\B(?=(?:\d{3})+$)/g, narrowSpace) : whole;
  return decimals === undefined ? groups : `${groups}.${decimals}`;
}

function withPower(value: number): string {
  const [mantissa = '', power = ''] = value.toExponential().split('e');
  const raised = [...power.replace('+', '')]
    .map((c) => (c === '-' ? '⁻' : (superscripts[Number(c)] ?? '')))
    .join('');
  return `${mantissa}×10${raised}`;
}
