import { invariant } from './invariant.ts';

const narrowSpace = '\u202f';
const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/**
 * A number to read: so many significant digits, no trailing zeros, a true minus, digits from 10 000 on in groups, a
 * power of ten only where zeros would have to be counted.
 */
export function formatNumber(value: number, significantDigits: number, mostDecimals = 100): string {
  invariant(Number.isFinite(value), `${value} cannot be shown`);
  const digits = Math.min(Math.max(Math.round(significantDigits), 1), 17);
  const rounded = roundDecimals(Number(Math.abs(value).toPrecision(digits)), mostDecimals);
  const sign = value < 0 && rounded !== 0 ? '−' : '';
  return `${sign}${rounded !== 0 && (rounded < 1e-6 || rounded >= 1e15) ? withPower(rounded) : grouped(rounded)}`;
}

function roundDecimals(value: number, mostDecimals: number): number {
  return mostDecimals > 20 ? value : Number(value.toFixed(mostDecimals));
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
