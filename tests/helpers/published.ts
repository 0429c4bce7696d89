import { expect } from 'vitest';

/** Wider than the printed digits: `within` is relative to the printed value, and `because` is why. */
export interface Slack {
  readonly within: number;
  readonly because: string;
}

/** Half a unit of the last digit of a number as printed: 0.05 for `12.3`, 5e-10 for `1.8460e-5`. */
export function halfUnitOfLastDigit(printed: string): number {
  const parts = /^[-+−]?(\d+)(?:\.(\d+))?(?:[eE]([-+]?\d+))?$/.exec(printed);
  if (parts === null) throw new Error(`«${printed}» is not a number as printed`);
  const [, , decimals = '', exponent = '0'] = parts;
  return 0.5 * 10 ** (Number(exponent) - decimals.length);
}

/**
 * How far a result may be from a number as printed. A hair is added, because 0.05 and the like are not exact in binary.
 */
export function allowedDeviation(printed: string, slack?: Slack): number {
  const value = Number(printed.replace('−', '-'));
  const half = halfUnitOfLastDigit(printed) * (1 + 1e-9) + Math.abs(value) * 1e-15;
  if (slack === undefined) return half;
  if (slack.because.trim() === '') throw new Error('a wider tolerance needs its reason');
  return Math.max(half, slack.within * Math.abs(value));
}

/** Expects a number that a source prints, as it prints it: its digits are the tolerance. */
export function expectPublished(actual: number, printed: string, slack?: Slack): void {
  const value = Number(printed.replace('−', '-'));
  const allowed = allowedDeviation(printed, slack);
  const tells = `${actual} is to agree with the printed ${printed} to ±${allowed.toPrecision(3)}`;
  expect(Number.isFinite(actual), `${actual} is not a number`).toBe(true);
  expect(Math.abs(actual - value), tells).toBeLessThanOrEqual(allowed);
}
