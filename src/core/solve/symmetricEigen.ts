export interface Eigen {
  readonly values: Float64Array;
  /** n × n, row-major; column k belongs to value k. */
  readonly vectors: Float64Array;
}

/** Sweeps are quadratic near the end: ten are plenty for any size met here, the rest is a guard. */
const MOST_SWEEPS = 60;

/**
 * All eigenvalues and orthonormal eigenvectors of a symmetric matrix (row-major) by cyclic Jacobi rotations.
 * Slower than tridiagonal methods for large n but simple and accurate even for very unlike eigenvalues. Not sorted.
 */
export function symmetricEigen(matrix: Float64Array, n: number): Eigen {
  const a = matrix.slice();
  const vectors = new Float64Array(n * n);
  for (let i = 0; i < n; i++) vectors[i * n + i] = 1;
  for (let sweep = 0; sweep < MOST_SWEEPS; sweep++) {
    let rotated = false;
    for (let p = 0; p < n - 1; p++) {
      for (let q = p + 1; q < n; q++) if (rotate(a, vectors, n, p, q)) rotated = true;
    }
    if (!rotated) break;
  }
  const values = new Float64Array(n);
  for (let i = 0; i < n; i++) values[i] = a[i * n + i] as number;
  return { values, vectors };
}

/** Turns the plane of p and q so that their coupling vanishes; false where it is too small to matter. */
function rotate(a: Float64Array, vectors: Float64Array, n: number, p: number, q: number): boolean {
  const coupling = a[p * n + q] as number;
  const app = a[p * n + p] as number;
  const aqq = a[q * n + q] as number;
  if (Math.abs(coupling) <= 1e-17 * Math.sqrt(Math.abs(app * aqq)) || coupling === 0) return false;
  const theta = (aqq - app) / (2 * coupling);
  const t = Math.sign(theta || 1) / (Math.abs(theta) + Math.sqrt(theta * theta + 1));
  const c = 1 / Math.sqrt(t * t + 1);
  const s = t * c;
  for (let k = 0; k < n; k++) {
    if (k !== p && k !== q) {
      const akp = a[k * n + p] as number;
      const akq = a[k * n + q] as number;
      const nextP = c * akp - s * akq;
      const nextQ = s * akp + c * akq;
      a[k * n + p] = nextP;
      a[p * n + k] = nextP;
      a[k * n + q] = nextQ;
      a[q * n + k] = nextQ;
    }
    const vkp = vectors[k * n + p] as number;
    const vkq = vectors[k * n + q] as number;
    vectors[k * n + p] = c * vkp - s * vkq;
    vectors[k * n + q] = s * vkp + c * vkq;
  }
  a[p * n + p] = app - t * coupling;
  a[q * n + q] = aqq + t * coupling;
  a[p * n + q] = 0;
  a[q * n + p] = 0;
  return true;
}
