import { sources } from '../../core/sources.ts';
import { formatNumber } from '../../units/formatNumber.ts';
import type { CheckGroup, CheckRecord } from './checkRecord.ts';

const thin = '\u202f';

/** The number that a check prints. */
export const publishedValue = ({ printed }: Pick<CheckRecord, 'printed'>): number =>
  Number(printed.replace('−', '-'));

/** A source as cited, with the place in it. */
export function citation({ source, where }: Pick<CheckGroup, 'source' | 'where'>): string {
  const cite = source in sources ? sources[source as keyof typeof sources].cite : source;
  return where === undefined ? cite : `${cite}; ${where}`;
}

/** How far off, in words: `0.3 % high`, `exact`; beside nil as a plain number. */
export function deviationSays(check: Pick<CheckRecord, 'deviation' | 'printed'>): string {
  const { deviation } = check;
  if (Math.abs(deviation) < 5e-8) return 'exact';
  const side = deviation > 0 ? 'high' : 'low';
  if (publishedValue(check) === 0) return `${formatNumber(Math.abs(deviation), 2)} ${side}`;
  const size = Math.abs(deviation) * 100;
  return size < 0.001
    ? `under 0.001${thin}% ${side}`
    : `${formatNumber(size, size < 100 ? 2 : 3)}${thin}% ${side}`;
}

/** How far off a check may be: `±0.05 %`. */
export function reachSays(check: CheckRecord): string {
  const [low, high] = check.allowed;
  const isRelative = publishedValue(check) !== 0;
  const size = (value: number) =>
    `${formatNumber(Math.abs(value) * (isRelative ? 100 : 1), 2)}${isRelative ? `${thin}%` : ''}`;
  const signed = (value: number) => `${value < 0 ? '−' : value > 0 ? '+' : ''}${size(value)}`;
  const isEven = Math.abs(low + high) <= 0.01 * (high - low);
  if (low === 0 && high === 0) return 'nothing';
  return isEven ? `±${size(high)}` : `${signed(low)} to ${signed(high)}`;
}

/** The same with its reason: `±0.05 %: its printed digits`. */
export const allowanceSays = (check: CheckRecord): string =>
  `${reachSays(check)}: ${check.because ?? 'its printed digits'}`;
