/**
 * Quantile of a sample by linear interpolation between order statistics (the rule most software calls type 7).
 * @param sorted rising, not empty
 */
export function quantile(sorted: ArrayLike<number>, share: number): number {
  const place = Math.min(1, Math.max(0, share)) * (sorted.length - 1);
  const low = Math.floor(place);
  const below = sorted[low] as number;
  const above = sorted[Math.min(low + 1, sorted.length - 1)] as number;
  return below + (place - low) * (above - below);
}
