import { normalQuantile } from './normal.ts';

/**
 * Where the true share lies, by the score interval of Wilson 1927, J. Am. Stat. Assoc. 22, 209–212, without correction
 * for continuity: `[low, high]` within 0 … 1. Sensible at both ends: none of 20 is 0 to 16 % at 95 % confidence, never
 * 0 ± 0; of no draws at all, anything from 0 to 1. It supposes independent draws; quasi-random ones leave a smaller
 * error, so that for them it is on the cautious side.
 * @param successes from 0 to `of`
 * @param confidence of both sides together, 0.95 for 95 %; below 1
 */
export function shareInterval(
  successes: number,
  of: number,
  confidence: number,
): readonly [low: number, high: number] {
  if (!(of > 0)) return [0, 1];
  const z = normalQuantile(0.5 + 0.5 * Math.min(1, Math.max(0, confidence)));
  const share = Math.min(1, Math.max(0, successes / of));
  const weight = (z * z) / of;
  const middle = share + 0.5 * weight;
  const reach = Math.sqrt(weight * (share * (1 - share) + 0.25 * weight));
  const low = share === 0 ? 0 : Math.max(0, (middle - reach) / (1 + weight));
  const high = share === 1 ? 1 : Math.min(1, (middle + reach) / (1 + weight));
  return [low, high];
}
