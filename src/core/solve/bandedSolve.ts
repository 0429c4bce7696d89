/**
 * Solves a symmetric positive definite band in place (LDLᵀ without pivoting); the answer stands in `rhs`.
 * @param band n rows of `halfBandwidth + 1`: the diagonal, then what stands right of it; overwritten (by inverse pivots)
 * @returns false where a pivot is not positive
 */
export function solveBanded(
  band: Float64Array,
  rhs: Float64Array,
  n: number,
  halfBandwidth: number,
): boolean {
  const width = halfBandwidth + 1;
  for (let k = 0; k < n; k++) {
    const row = k * width;
    const pivot = band[row] as number;
    if (!(pivot > 0)) return false;
    const inverse = 1 / pivot;
    band[row] = inverse;
    const reach = Math.min(halfBandwidth, n - 1 - k);
    const x = rhs[k] as number;
    for (let i = 1; i <= reach; i++) {
      const value = band[row + i] as number;
      if (value === 0) continue;
      const factor = value * inverse;
      const below = (k + i) * width - i;
      for (let j = i; j <= reach; j++) {
        band[below + j] = (band[below + j] as number) - factor * (band[row + j] as number);
      }
      rhs[k + i] = (rhs[k + i] as number) - factor * x;
    }
  }
  for (let k = n - 1; k >= 0; k--) {
    const row = k * width;
    const reach = Math.min(halfBandwidth, n - 1 - k);
    let sum = rhs[k] as number;
    for (let i = 1; i <= reach; i++) sum -= (band[row + i] as number) * (rhs[k + i] as number);
    rhs[k] = sum * (band[row] as number);
  }
  return true;
}
