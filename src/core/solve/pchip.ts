/** A monotone piecewise cubic: knots, values and slopes. */
export interface Pchip {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly slope: Float64Array;
}

/**
 * Monotone interpolation through points (Fritsch & Carlson 1980, weighted harmonic mean of neighbouring chords).
 * Between two points the curve never leaves their range: no bump that is not in the data.
 * @param xs at least two, strictly rising
 */
export function preparePchip(xs: readonly number[], ys: readonly number[]): Pchip {
  const n = xs.length;
  const x = new Float64Array(n);
  const y = new Float64Array(n);
  const slope = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    x[i] = xs[i] as number;
    y[i] = ys[i] as number;
  }
  const step = (i: number) => (x[i + 1] as number) - (x[i] as number);
  const chord = (i: number) => ((y[i + 1] as number) - (y[i] as number)) / step(i);
  if (n === 2) {
    slope.fill(chord(0));
  } else {
    for (let i = 1; i < n - 1; i++) slope[i] = innerSlope(step(i - 1), step(i), chord(i - 1), chord(i));
    slope[0] = endSlope(step(0), step(1), chord(0), chord(1));
    slope[n - 1] = endSlope(step(n - 2), step(n - 3), chord(n - 2), chord(n - 3));
  }
  return { x, y, slope };
}

function innerSlope(h0: number, h1: number, d0: number, d1: number): number {
  if (d0 * d1 <= 0) return 0;
  const w0 = 2 * h1 + h0;
  const w1 = h1 + 2 * h0;
  return (w0 + w1) / (w0 / d0 + w1 / d1);
}

/** Three-point end slope, held to the sign of its chord and to three times it. */
function endSlope(h0: number, h1: number, d0: number, d1: number): number {
  const slope = ((2 * h0 + h1) * d0 - h0 * d1) / (h0 + h1);
  if (slope * d0 <= 0) return 0;
  return d0 * d1 < 0 && Math.abs(slope) > 3 * Math.abs(d0) ? 3 * d0 : slope;
}

/** Value to `out[0]`, derivative to `out[1]`. Outside the points the curve goes straight on with its end slope. */
export function evaluatePchip(curve: Pchip, at: number, out: Float64Array): void {
  const { x, y, slope } = curve;
  const last = x.length - 1;
  const end = at <= (x[0] as number) ? 0 : at >= (x[last] as number) ? last : -1;
  if (end >= 0) {
    out[0] = (y[end] as number) + (slope[end] as number) * (at - (x[end] as number));
    out[1] = slope[end] as number;
    return;
  }
  let low = 0;
  let high = last;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((x[middle] as number) <= at) low = middle;
    else high = middle;
  }
  const h = (x[high] as number) - (x[low] as number);
  const t = (at - (x[low] as number)) / h;
  const m0 = (slope[low] as number) * h;
  const m1 = (slope[high] as number) * h;
  const rise = (y[high] as number) - (y[low] as number);
  const b = 3 * rise - 2 * m0 - m1;
  const a = m0 + m1 - 2 * rise;
  out[0] = (y[low] as number) + t * (m0 + t * (b + t * a));
  out[1] = (m0 + t * (2 * b + 3 * t * a)) / h;
}
