import { quantile } from '../../src/core/solve/quantile.ts';

/**
 * A second opinion on `additiveIndices`, by another method. Share of a result’s variance that each input brings by itself (first-order index of Sobol), from one sample that was
 * drawn anyway: classes of each input as in Plischke, Borgonovo & Smith 2013, Eur. J. Oper. Res. 226, 536, but with a
 * straight line in each class instead of its mean, which would need many more classes for the same truth.
 *
 * Chance alone explains something too. How much, per number that is fitted, is measured by what twice as many
 * classes add (the median over all inputs), and never taken for more than independent draws would leave: quasi-random
 * ones leave between a hundredth and all of that. So a share has hardly a bias with either; an input without effect gets
 * 0, or some tens of 1/n at most. Clipped to 0 … 1, in the order of `columns`; a constant input or result gives 0. Added
 * up they fall short of 1 by what inputs do together; at 2,000 draws that is good to 0.05 for up to forty inputs.
 * @param columns one for each input, as long as `result`; all finite, inputs independent of each other
 * @param classes of equal count; the fourth root of the draws unless told
 */
export function classIndices(
  columns: readonly Float64Array[],
  result: Float64Array,
  classes = Math.round(result.length ** 0.25),
): number[] {
  const n = result.length;
  const { mean, squares } = spreadOf(result);
  if (!(squares > n * (1e-13 * mean) ** 2)) return columns.map(() => 0);
  const centred = result.map((value) => value - mean);
  const most = Math.max(1, Math.floor(n / 4));
  const coarse = Math.min(most, Math.max(1, Math.floor(classes)));
  const fine = Math.min(most, 2 * coarse);
  const fits = columns.map((column) => {
    const order = rising(column);
    const [x, y] = [inOrder(column, order), inOrder(centred, order)];
    return { few: fitClasses(x, y, coarse), many: fitClasses(x, y, fine) };
  });
  const added = fits
    .map(({ few, many }) => (many.explained - few.explained) / (many.fitted - few.fitted))
    .filter(Number.isFinite)
    .sort((a, b) => a - b);
  const measured = added.length > 0 ? Math.max(0, quantile(added, 0.5)) : Number.POSITIVE_INFINITY;
  return fits.map(({ few }) => {
    const left = n - 1 - few.fitted;
    if (few.fitted === 0 || left <= 0) return 0;
    const chance = Math.min(measured, (squares - few.explained) / left);
    return Math.min(1, Math.max(0, (few.explained - few.fitted * chance) / squares));
  });
}

interface Fit {
  /** Sum of squares that the lines explain. */
  readonly explained: number;
  /** Numbers fitted beside the mean of all. */
  readonly fitted: number;
}

/** A straight line in each of so many classes of equal count. @param x rising @param y of mean 0 */
function fitClasses(x: Float64Array, y: Float64Array, classes: number): Fit {
  const n = x.length;
  if (x[0] === x[n - 1]) return { explained: 0, fitted: 0 };
  let explained = 0;
  let fitted = -1;
  for (let k = 0; k < classes; k++) {
    const [from, to] = [Math.floor((k * n) / classes), Math.floor(((k + 1) * n) / classes)];
    const size = to - from;
    let [sumX, sumY] = [0, 0];
    for (let i = from; i < to; i++) {
      sumX += x[i] as number;
      sumY += y[i] as number;
    }
    let [xx, xy] = [0, 0];
    for (let i = from; i < to; i++) {
      const off = (x[i] as number) - sumX / size;
      xx += off * off;
      xy += off * (y[i] as number);
    }
    explained += (sumY * sumY) / size + (xx > 0 ? (xy * xy) / xx : 0);
    fitted += xx > 0 ? 2 : 1;
  }
  return { explained, fitted };
}

/** Places of the values from the least to the largest. */
function rising(values: Float64Array): Uint32Array {
  return Uint32Array.from(values.keys()).sort((a, b) => (values[a] as number) - (values[b] as number));
}

function inOrder(values: Float64Array, order: Uint32Array): Float64Array {
  const out = new Float64Array(order.length);
  for (let i = 0; i < out.length; i++) out[i] = values[order[i] as number] as number;
  return out;
}

function spreadOf(values: Float64Array): { readonly mean: number; readonly squares: number } {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return { mean, squares: values.reduce((sum, value) => sum + (value - mean) ** 2, 0) };
}
