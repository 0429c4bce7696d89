/**
 * Rising edges of equal bins from `low` to `high` or a little beyond, at round numbers (1, 2 or 5 times a power of ten
 * apart). Of a single value, one or two bins about it, a thousandth of it wide.
 * @param most bins, 2 or more
 */
export function roundEdges(low: number, high: number, most: number): number[] {
  const size = Math.max(Math.abs(low), Math.abs(high));
  const apart = high - low > 1e-9 * size ? high - low : 1e-3 * size;
  const width = apart > 1e-200 ? apart : 1;
  const least = width / Math.max(1, most - 1);
  const power = Math.floor(Math.log10(least));
  for (const times of [1, 2, 5, 10]) {
    if (times * 10 ** power < least * (1 - 1e-9)) continue;
    const from = Math.floor(multipleOf(low, times, power));
    const to = Math.max(from + 1, Math.ceil(multipleOf(high, times, power)));
    return Array.from({ length: to - from + 1 }, (_, i) => decimal((from + i) * times, power));
  }
  return [low, high];
}

/** How many steps of times·10^power a value is; a whole number if it is within rounding of one. */
function multipleOf(value: number, times: number, power: number): number {
  const steps = value / decimal(times, power);
  return Math.abs(steps - Math.round(steps)) < 1e-9 ? Math.round(steps) : steps;
}

/** Digits and power of ten put together so that 3 and −1 is 0.3 to the last bit. */
function decimal(digits: number, power: number): number {
  return power < 0 ? digits / 10 ** -power : digits * 10 ** power;
}

/**
 * How many values fall between each two edges; the upper edge belongs to the next bin, the last to its own. Every value
 * is counted: one beyond the ends in the bin at the end.
 * @param edges rising, two or more, equally far apart
 */
export function countInBins(values: ArrayLike<number>, edges: readonly number[]): number[] {
  const bins = edges.length - 1;
  const counts = new Array<number>(bins).fill(0);
  for (let i = 0; i < values.length; i++) {
    const value = values[i] as number;
    let bin = 0;
    while (bin < bins - 1 && value >= (edges[bin + 1] as number)) bin++;
    counts[bin] = (counts[bin] as number) + 1;
  }
  return counts;
}
