/**
 * Solves `matrix · x = rhs` in place by elimination with row pivoting; the answer stands in `rhs`.
 * @param matrix n × n, row-major; overwritten
 * @returns false where the matrix is singular
 */
export function solveDense(matrix: Float64Array, rhs: Float64Array, n: number): boolean {
  for (let k = 0; k < n; k++) {
    const pivot = largestBelow(matrix, n, k);
    if (!(Math.abs(matrix[pivot * n + k] as number) > 0)) return false;
    if (pivot !== k) swapRows(matrix, rhs, n, k, pivot);
    const inverse = 1 / (matrix[k * n + k] as number);
    for (let i = k + 1; i < n; i++) {
      const factor = (matrix[i * n + k] as number) * inverse;
      if (factor === 0) continue;
      for (let j = k + 1; j < n; j++) {
        matrix[i * n + j] = (matrix[i * n + j] as number) - factor * (matrix[k * n + j] as number);
      }
      rhs[i] = (rhs[i] as number) - factor * (rhs[k] as number);
    }
  }
  for (let k = n - 1; k >= 0; k--) {
    let sum = rhs[k] as number;
    for (let j = k + 1; j < n; j++) sum -= (matrix[k * n + j] as number) * (rhs[j] as number);
    rhs[k] = sum / (matrix[k * n + k] as number);
  }
  return true;
}

function largestBelow(matrix: Float64Array, n: number, k: number): number {
  let row = k;
  let most = Math.abs(matrix[k * n + k] as number);
  for (let i = k + 1; i < n; i++) {
    const size = Math.abs(matrix[i * n + k] as number);
    if (size > most) {
      most = size;
      row = i;
    }
  }
  return row;
}

function swapRows(matrix: Float64Array, rhs: Float64Array, n: number, a: number, b: number): void {
  for (let j = 0; j < n; j++) {
    const kept = matrix[a * n + j] as number;
    matrix[a * n + j] = matrix[b * n + j] as number;
    matrix[b * n + j] = kept;
  }
  const kept = rhs[a] as number;
  rhs[a] = rhs[b] as number;
  rhs[b] = kept;
}
