/** Standard normal distribution function: series near the middle, continued fraction in the tails; 1e-14 or better. */
export function normalCdf(z: number): number {
  const size = Math.abs(z);
  if (size > 38) return z > 0 ? 1 : 0;
  const density = Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
  if (size < 3.5) {
    let term = size;
    let sum = size;
    for (let i = 3; term > 1e-17 * sum; i += 2) {
      term *= (size * size) / i;
      sum += term;
    }
    return 0.5 + Math.sign(z) * density * sum;
  }
  let fraction = size;
  for (let i = 60; i > 0; i--) fraction = size + i / fraction;
  const tail = density / fraction;
  return z > 0 ? 1 - tail : tail;
}

/**
 * Inverse of `normalCdf`: a rational start, then Newton with curvature (Halley), always in the lower tail, where a share
 * keeps its digits. A share of nothing (below 1e-300) or of everything gives the finite ends ±38.
 */
export function normalQuantile(share: number): number {
  const tail = Math.min(share, 1 - share);
  if (!(tail >= 1e-300)) return share < 0.5 ? -38 : 38;
  const t = Math.sqrt(-2 * Math.log(tail));
  let z =
    (2.515517 + 0.802853 * t + 0.010328 * t * t) / (1 + t * (1.432788 + t * (0.189269 + 0.001308 * t))) - t;
  for (let i = 0; i < 4; i++) {
    const error = (normalCdf(z) - tail) * Math.sqrt(2 * Math.PI) * Math.exp(0.5 * z * z);
    z -= error / (1 + 0.5 * z * error);
  }
  return share < 0.5 ? z : -z;
}

/** Parameters of the logarithm of a lognormal quantity with this mean and coefficient of variation. */
export function lognormalFromMean(
  mean: number,
  variation: number,
): { readonly mu: number; readonly sigma: number } {
  const s2 = Math.log(1 + variation * variation);
  return { mu: Math.log(mean) - 0.5 * s2, sigma: Math.sqrt(s2) };
}
