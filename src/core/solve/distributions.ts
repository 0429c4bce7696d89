import { lognormalFromMean, normalCdf, normalQuantile } from './normal.ts';

/**
 * Inverse distribution functions: the value below which this share (0 to 1) of a spread lies. All are finite for finite
 * parameters, a spread of nothing is its middle, and none leaves its bounds. `low` not above `high`.
 */

/** Even from `low` to `high`. */
export function uniformQuantile(share: number, low: number, high: number): number {
  return held(low + share * (high - low), low, high);
}

/** Triangular from `low` to `high`, most often near `peak` (held between the two). */
export function triangularQuantile(share: number, low: number, peak: number, high: number): number {
  const width = high - low;
  const rise = held(peak, low, high) - low;
  if (!(width > 0)) return low;
  const value =
    share * width < rise
      ? low + Math.sqrt(share * width * rise)
      : high - Math.sqrt((1 - share) * width * (width - rise));
  return held(value, low, high);
}

/** Normal; with bounds, the part between them alone (what lies outside is spread over the inside in proportion). */
export function boundedNormalQuantile(
  share: number,
  mean: number,
  deviation: number,
  low = Number.NEGATIVE_INFINITY,
  high = Number.POSITIVE_INFINITY,
): number {
  if (!(deviation > 0)) return held(mean, low, high);
  const z = standardBetween(share, (low - mean) / deviation, (high - mean) / deviation);
  return held(mean + deviation * z, low, high);
}

/**
 * Lognormal by the arithmetic mean and the coefficient of variation that it has without bounds; with bounds, the part
 * between them alone. A mean at or below nothing is given back as it is: there is no such lognormal.
 */
export function boundedLognormalQuantile(
  share: number,
  mean: number,
  variation: number,
  low = 0,
  high = Number.POSITIVE_INFINITY,
): number {
  if (!(mean > 0) || !(variation > 0)) return held(mean, low, high);
  const { mu, sigma } = lognormalFromMean(mean, variation);
  const [from, to] = [low, high].map((bound) => Math.log(Math.max(0, bound)));
  const logarithm = boundedNormalQuantile(share, mu, sigma, from, to);
  return held(Math.exp(Math.min(709, logarithm)), low, high);
}

/** Quantile of a standard normal kept between two bounds; in the lower half, where small shares keep their digits. */
function standardBetween(share: number, low: number, high: number): number {
  if (low > 0) return -standardBetween(1 - share, -high, -low);
  const below = normalCdf(low);
  return normalQuantile(below + share * (normalCdf(high) - below));
}

function held(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}
