export interface SampleSummary {
  readonly mean: number;
  /** Of what the sample was drawn from (divided by n − 1); 0 for a single value. */
  readonly deviation: number;
  /** All values, rising, as `quantile` takes them. */
  readonly sorted: Float64Array;
}

/** Of an empty sample there is none. @param values finite, in any order, left as they are */
export function sampleSummary(values: ArrayLike<number>): SampleSummary | null {
  const sorted = Float64Array.from(values).sort();
  const count = sorted.length;
  if (count === 0) return null;
  const least = sorted[0] as number;
  const mean = least + sorted.reduce((sum, value) => sum + (value - least), 0) / count;
  const squares = sorted.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { mean, deviation: count > 1 ? Math.sqrt(squares / (count - 1)) : 0, sorted };
}
