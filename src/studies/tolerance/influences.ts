import { firstOrderIndices, rankCorrelation } from '../../core/solve/sensitivity.ts';
import type { Columns } from './columns.ts';
import type { Prepared } from './prepared.ts';
import { boxesOf, type ToleranceQuestion } from './question.ts';
import type { Influence } from './result.ts';

/** More draws than these would not change what matters most. */
const mostDrawn = 16_384;

/** A result and what it rests on. */
interface Sample {
  readonly inputs: readonly Float64Array[];
  readonly results: readonly Float64Array[];
}

/**
 * How much of the variance of margin and of holding goes with each variation alone. What was drawn is drawn again by its
 * number instead of being kept. What a batch shares is judged on means of batches, for there are no more of its draws.
 * @param holds 1 where a box holds
 */
export function influences(
  question: ToleranceQuestion,
  { variations, sampler }: Prepared,
  { figures, outcome }: Columns,
  holds: Uint8Array,
): { readonly draws: number; readonly list: Influence[] } {
  const { drawn, shared, list } = variations;
  const boxes = boxesOf(question.boxes);
  const most = Math.max(1, Math.floor(mostDrawn / boxes)) * boxes;
  const taken: number[] = [];
  // Boxes without an answer have no margin: they are left out, and so is their batch.
  for (let from = 0; from + boxes <= outcome.length && taken.length < most; from += boxes) {
    if (outcome.subarray(from, from + boxes).every((each) => each > 0))
      for (let i = from; i < from + boxes; i++) taken.push(i);
  }
  const results = [figures.filmMargin_K, holds].map((values) =>
    Float64Array.from(taken, (i) => values[i] as number),
  );
  const shares = drawn.map(() => new Float64Array(taken.length));
  const point = new Float64Array(drawn.length);
  taken.forEach((index, row) => {
    sampler.sequence.read(index, point);
    for (let d = 0; d < drawn.length; d++) (shares[d] as Float64Array)[row] = point[d] as number;
  });
  const all = { inputs: shares.slice(shared), results };
  const ofBatches: Sample = {
    inputs: shares.slice(0, shared).map((each) => means(each, boxes)),
    results: results.map((each) => means(each, boxes)),
  };
  const indices = results.map((result, r) => [
    ...indicesOn(ofBatches, r, variance(result)),
    ...indicesOn(all, r, variance(result)),
  ]);
  const ways = [...waysOf(ofBatches), ...waysOf(all)];
  const areSame = new Set(results[1]).size < 2;
  const sumOf = (values: readonly number[] | undefined, variation: number) =>
    drawn.reduce((sum, { of }, d) => (of === variation ? sum + (values?.[d] ?? 0) : sum), 0);
  const told = list.map(
    (variation, v): Influence => ({
      of:
        variation.is === 'input'
          ? { is: 'input', path: variation.spread.path }
          : { is: 'method', factor: variation.scatter.factor },
      onMargin: sumOf(indices[0], v),
      onHolding: areSame ? null : sumOf(indices[1], v),
      way: ways[drawn.findIndex(({ of }) => of === v)] ?? 0,
    }),
  );
  return { draws: taken.length, list: told.sort((a, b) => b.onMargin - a.onMargin) };
}

/** Of the whole variance, though the means of batches vary less. */
function indicesOn({ inputs, results }: Sample, r: number, whole: number): number[] {
  const result = results[r] as Float64Array;
  if (inputs.length === 0 || !(whole > 0)) return inputs.map(() => 0);
  const part = variance(result) / whole;
  return firstOrderIndices(inputs, result).map((index) => index * part);
}

function waysOf({ inputs, results }: Sample): number[] {
  return inputs.map((input) => rankCorrelation(input, results[0] as Float64Array));
}

function means(values: Float64Array, each: number): Float64Array {
  if (each === 1) return values;
  return Float64Array.from({ length: values.length / each }, (_, batch) => {
    let sum = 0;
    for (let i = batch * each; i < (batch + 1) * each; i++) sum += values[i] as number;
    return sum / each;
  });
}

function variance(values: Float64Array): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length;
}
