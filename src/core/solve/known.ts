import { symmetricEigen } from './symmetricEigen.ts';

/** What observations of known scatter tell of the parameters that they depend on. */
export interface Known {
  /** Directions of the parameters that are told at all, at most their number. */
  readonly rank: number;
  /** Largest over least singular value, each parameter in units of what it is told to alone; infinite is told as 1e16. */
  readonly condition: number;
  /** n × n, row-major: (JᵀJ)⁻¹. Of a direction that nothing tells the variance is 1e300, as good as infinite. */
  readonly covariance: Float64Array;
  /** Standard uncertainty of each parameter with all others fitted too, and with all others known. */
  readonly sigma: Float64Array;
  readonly alone: Float64Array;
  readonly correlation: Float64Array;
  /** Cosine between the columns of the Jacobian: 1 where one parameter does just what the other does. */
  readonly alikeness: Float64Array;
  /** Way along which the parameters are told least, in the parameters’ own units, of length 1. */
  readonly weakest: Float64Array;
}

/** As good as infinite, and finite. */
const boundless = 1e300;
/** A parameter with less than this part in a direction does not lie in it. */
const leastPart = 1e-6;

/**
 * From the Jacobian of observations, each over its own standard deviation: covariance, correlation, rank and the direction
 * that is told least, by eigenvalues of JᵀJ with columns of length 1 (Golub & Van Loan, Matrix Computations, on least squares
 * of deficient rank).
 * @param jacobian rows × n, row-major
 * @param tolerance singular values below this share of the largest count as nil; not below 1e-8, where rounding begins
 */
export function knownFrom(jacobian: Float64Array, rows: number, n: number, tolerance = 1e-7): Known {
  const length = columnLengths(jacobian, rows, n);
  const alikeness = cosines(jacobian, rows, length);
  const { values, vectors } = symmetricEigen(alikeness, n);
  const most = values.reduce((a, b) => Math.max(a, b), 0);
  const least = values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  const isTold = Array.from(values, (value) => value > tolerance * tolerance * most);
  const covariance = toldCovariance(values, vectors, length, isTold);
  const sigma = Float64Array.from(length, (_, i) => Math.sqrt(covariance[i * n + i] as number));
  return {
    rank: isTold.filter(Boolean).length,
    condition: least > 1e-32 * most && most > 0 ? Math.min(1e16, Math.sqrt(most / least)) : 1e16,
    covariance,
    sigma,
    alone: length.map((size) => (size > 0 ? 1 / size : Math.sqrt(boundless))),
    correlation: scaledBy(covariance, sigma),
    alikeness,
    weakest: weakestWay(values, vectors, length),
  };
}

function columnLengths(jacobian: Float64Array, rows: number, n: number): Float64Array {
  const length = new Float64Array(n);
  for (let r = 0; r < rows; r++)
    for (let i = 0; i < n; i++) length[i] = Math.hypot(length[i] as number, jacobian[r * n + i] as number);
  return length;
}

/** Of every two columns; a column of nothing is like none, itself included. */
function cosines(jacobian: Float64Array, rows: number, length: Float64Array): Float64Array {
  const n = length.length;
  const found = new Float64Array(n * n);
  for (let r = 0; r < rows; r++) {
    for (let i = 0; i < n; i++) {
      if (!((length[i] as number) > 0)) continue;
      const a = (jacobian[r * n + i] as number) / (length[i] as number);
      for (let j = 0; j < n; j++) {
        if (!((length[j] as number) > 0)) continue;
        const b = (jacobian[r * n + j] as number) / (length[j] as number);
        found[i * n + j] = (found[i * n + j] as number) + a * b;
      }
    }
  }
  return found;
}

/** Along the directions that are told; a parameter that lies in another one as well is open. */
function toldCovariance(
  values: Float64Array,
  vectors: Float64Array,
  length: Float64Array,
  isTold: readonly boolean[],
): Float64Array {
  const n = length.length;
  const covariance = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    const isOpen = isTold.some((told, k) => !told && Math.abs(vectors[i * n + k] as number) > leastPart);
    for (let j = 0; j < n; j++) {
      let sum = 0;
      for (let k = 0; k < n; k++) {
        if (!isTold[k]) continue;
        sum += ((vectors[i * n + k] as number) * (vectors[j * n + k] as number)) / (values[k] as number);
      }
      const scale = (length[i] as number) * (length[j] as number);
      covariance[i * n + j] = isOpen && i === j ? boundless : scale > 0 ? sum / scale : 0;
    }
  }
  return covariance;
}

function scaledBy(covariance: Float64Array, sigma: Float64Array): Float64Array {
  const n = sigma.length;
  return covariance.map((value, at) => {
    const i = Math.floor(at / n);
    const j = at % n;
    return i === j ? 1 : Math.max(-1, Math.min(1, value / ((sigma[i] as number) * (sigma[j] as number))));
  });
}

function weakestWay(values: Float64Array, vectors: Float64Array, length: Float64Array): Float64Array {
  const n = length.length;
  let least = 0;
  for (let k = 1; k < n; k++) if ((values[k] as number) < (values[least] as number)) least = k;
  const nothing = length.findIndex((size) => !(size > 0));
  const way = Float64Array.from(length, (size, i) =>
    nothing >= 0 ? Number(i === nothing) : (vectors[i * n + least] as number) / size,
  );
  const size = Math.hypot(...way);
  return way.map((part) => (size > 0 ? part / size : 0));
}
