import { solveDense } from './denseSolve.ts';
import { normalQuantile } from './normal.ts';

/** One input of a sample: its shares of all draws (above 0, below 1) and the polynomials that follow its effect best. */
export interface AdditiveInput {
  readonly shares: Float64Array;
  /** Hermite’s, in its normal deviate, for what is drawn normally; Legendre’s, in its share, for the rest. */
  readonly basis: 'hermite' | 'legendre';
  /** Highest power, 1 at least. */
  readonly degree: number;
  /** Draws that follow one another with the same share: 1 where every draw has its own. */
  readonly alike: number;
}

/**
 * Share of a result’s variance that each input brings by itself (first-order index of Sobol), for every result: all
 * inputs’ polynomials are fitted to it at once by least squares, and the squares of their coefficients are the shares
 * (polynomial chaos; Sudret 2008, Reliab. Eng. Syst. Saf. 93, 964, from memory). One fit of all, not one input after the
 * other: what one explains cannot be taken for the work of another that was drawn a little like it, so that some hundred
 * draws are enough. What chance alone would explain is taken off. Clipped at nil.
 * @param inputs as long as the results; their degrees together well below the number of draws
 * @returns one list a result, in the order of `inputs`; `null` where the draws cannot tell the inputs apart
 */
export function additiveIndices(
  inputs: readonly AdditiveInput[],
  results: readonly Float64Array[],
): number[][] | null {
  const n = results[0]?.length ?? 0;
  const columns = inputs.flatMap(({ degree }, of) => Array.from({ length: degree }, () => of));
  const width = columns.length + 1;
  const rows = basisRows(inputs, n, width);
  const normal = normalMatrix(rows, n, width);
  const lists: number[][] = [];
  for (const result of results) {
    const fit = projected(rows, result, width);
    if (!solveDense(normal.slice(), fit, width)) return null;
    lists.push(sharesOf(inputs, columns, result, fit, residualsOf(rows, result, fit)));
  }
  return lists;
}

/** Row by row: 1, then every input’s polynomials, each of mean 0 and variance 1 over all draws. */
function basisRows(inputs: readonly AdditiveInput[], n: number, width: number): Float64Array {
  const rows = new Float64Array(n * width);
  for (let i = 0; i < n; i++) rows[i * width] = 1;
  let at = 1;
  for (const { shares, basis, degree } of inputs) {
    for (let i = 0; i < n; i++) {
      const share = shares[i] as number;
      const place = i * width + at;
      if (basis === 'hermite') writeHermite(rows, place, degree, normalQuantile(share));
      else writeLegendre(rows, place, degree, 2 * share - 1);
    }
    at += degree;
  }
  return rows;
}

/** Hermite’s polynomials of 1 … degree, by their recurrence, each of variance 1 over a normal deviate. */
function writeHermite(out: Float64Array, at: number, degree: number, z: number): void {
  let [before, now] = [1, z];
  out[at] = z;
  for (let k = 2; k <= degree; k++) {
    [before, now] = [now, (z * now - Math.sqrt(k - 1) * before) / Math.sqrt(k)];
    out[at + k - 1] = now;
  }
}

/** Legendre’s polynomials of 1 … degree, by their recurrence, each of variance 1 over an even spread. */
function writeLegendre(out: Float64Array, at: number, degree: number, x: number): void {
  let [before, now] = [1, x];
  out[at] = Math.sqrt(3) * x;
  for (let k = 2; k <= degree; k++) {
    [before, now] = [now, ((2 * k - 1) * x * now - (k - 1) * before) / k];
    out[at + k - 1] = Math.sqrt(2 * k + 1) * now;
  }
}

function normalMatrix(rows: Float64Array, n: number, width: number): Float64Array {
  const matrix = new Float64Array(width * width);
  for (let i = 0; i < n; i++) {
    const row = rows.subarray(i * width, (i + 1) * width);
    for (let a = 0; a < width; a++) {
      const value = row[a] as number;
      const start = a * width;
      for (let b = a; b < width; b++)
        matrix[start + b] = (matrix[start + b] as number) + value * (row[b] as number);
    }
  }
  for (let a = 0; a < width; a++)
    for (let b = 0; b < a; b++) matrix[a * width + b] = matrix[b * width + a] as number;
  return matrix;
}

function projected(rows: Float64Array, result: Float64Array, width: number): Float64Array {
  const sums = new Float64Array(width);
  for (let i = 0; i < result.length; i++) {
    const value = result[i] as number;
    for (let a = 0; a < width; a++) sums[a] = (sums[a] as number) + value * (rows[i * width + a] as number);
  }
  return sums;
}

function residualsOf(rows: Float64Array, result: Float64Array, fit: Float64Array): Float64Array {
  const width = fit.length;
  return result.map((value, i) => {
    let left = value;
    for (let a = 0; a < width; a++) left -= (fit[a] as number) * (rows[i * width + a] as number);
    return left;
  });
}

/** Squares of coefficients over all of the variance: theirs and what the fit leaves unexplained. */
function sharesOf(
  inputs: readonly AdditiveInput[],
  columns: readonly number[],
  result: Float64Array,
  fit: Float64Array,
  residuals: Float64Array,
): number[] {
  const chances = new Map<number, number>();
  const chanceOf = (alike: number) => {
    const known = chances.get(alike) ?? chance(residuals, alike, columns.length);
    chances.set(alike, known);
    return known;
  };
  const brought = inputs.map(() => 0);
  columns.forEach((of, column) => {
    const squared = (fit[column + 1] as number) ** 2 - chanceOf((inputs[of] as AdditiveInput).alike);
    brought[of] = (brought[of] as number) + squared;
  });
  const n = result.length;
  const left = (meanSquare(residuals) * n) / Math.max(1, n - columns.length - 1);
  const whole = brought.reduce((sum, each) => sum + Math.max(0, each), left);
  return brought.map((each) => (whole > 1e-24 * meanSquare(result) ? Math.max(0, each / whole) : 0));
}

/** Square of a coefficient that chance alone would leave, from what the fit leaves unexplained. */
function chance(residuals: Float64Array, alike: number, fitted: number): number {
  const groups = Math.floor(residuals.length / alike);
  let squares = 0;
  for (let g = 0; g < groups; g++) {
    let sum = 0;
    for (let i = g * alike; i < (g + 1) * alike; i++) sum += residuals[i] as number;
    squares += (sum / alike) ** 2;
  }
  const free = alike === 1 ? Math.max(1, groups - fitted - 1) : Math.max(1, groups - 1);
  return squares / free / groups;
}

function meanSquare(values: Float64Array): number {
  return values.reduce((sum, value) => sum + value * value, 0) / values.length;
}
