import { type AdditiveInput, additiveIndices } from '../../core/solve/additiveIndices.ts';
import { rankCorrelation } from '../../core/solve/rankCorrelation.ts';
import type { Columns } from './columns.ts';
import type { Prepared } from './prepared.ts';
import { boxesOf, type ToleranceQuestion } from './question.ts';
import type { Influence } from './result.ts';
import type { Variation } from './variations.ts';

/** More draws than these would not change what matters most. */
const mostDrawn = 8192;
const mostDegree = 3;

/**
 * How much of the variance of margin and of holding goes with each variation alone. What was drawn is drawn again by its
 * number instead of being kept.
 * @param holds 1 where a box holds
 * @returns no variations where there are too few boxes, or batches, to tell them apart
 */
export function influences(
  question: ToleranceQuestion,
  { variations, sampler }: Prepared,
  { figures, outcome }: Columns,
  holds: Uint8Array,
): { readonly draws: number; readonly list: Influence[] } {
  const { drawn, shared, list } = variations;
  const boxes = boxesOf(question.boxes);
  const taken = answeredBoxes(outcome, boxes);
  const degreeOf = degrees(taken.length, boxes, shared, drawn.length);
  if (degreeOf === null) return { draws: taken.length, list: [] };
  const shares = sharesAgain(taken, drawn.length, sampler.sequence.read);
  const inputs = drawn.map(
    ({ kind }, d): AdditiveInput => ({
      shares: shares[d] as Float64Array,
      basis: kind === 'normal' || kind === 'lognormal' ? 'hermite' : 'legendre',
      degree: degreeOf(d),
      alike: d < shared ? boxes : 1,
    }),
  );
  const margin = Float64Array.from(taken, (i) => figures.filmMargin_K[i] as number);
  const holding = Float64Array.from(taken, (i) => holds[i] as number);
  const [onMargin, onHolding] = additiveIndices(inputs, [margin, holding]) ?? [];
  if (!onMargin || !onHolding) return { draws: taken.length, list: [] };
  const areSame = new Set(holding).size < 2;
  const told = list.map((variation, v): Influence => {
    const own = drawn.flatMap(({ of }, d) => (of === v ? [d] : []));
    const sum = (indices: readonly number[]) => own.reduce((all, d) => all + (indices[d] ?? 0), 0);
    return {
      of: nameOf(variation),
      onMargin: sum(onMargin),
      onHolding: areSame ? null : sum(onHolding),
      way: rankCorrelation(shares[own[0] ?? 0] ?? [], margin),
    };
  });
  return { draws: taken.length, list: told.sort((a, b) => b.onMargin - a.onMargin) };
}

function nameOf(variation: Variation): Influence['of'] {
  return variation.is === 'input'
    ? { is: 'input', path: variation.spread.path }
    : { is: 'method', factor: variation.scatter.factor };
}

/** Boxes without an answer have no margin: they are left out, and so is their batch. */
function answeredBoxes(outcome: Uint8Array, boxes: number): number[] {
  const most = Math.max(1, Math.floor(mostDrawn / boxes)) * boxes;
  const taken: number[] = [];
  for (let from = 0; from + boxes <= outcome.length && taken.length < most; from += boxes) {
    if (outcome.subarray(from, from + boxes).every((each) => each > 0))
      for (let i = from; i < from + boxes; i++) taken.push(i);
  }
  return taken;
}

/** Powers of each input that so many boxes can tell apart: what a batch shares is drawn once a batch only. */
function degrees(
  count: number,
  boxes: number,
  shared: number,
  all: number,
): ((dimension: number) => number) | null {
  const most = (draws: number, inputs: number) =>
    inputs === 0 ? mostDegree : Math.min(mostDegree, Math.floor((draws - 10) / (1.5 * inputs)));
  const ofBox = most(count, all);
  const ofBatch = Math.min(ofBox, most(count / boxes, shared));
  return ofBatch < 1 ? null : (dimension) => (dimension < shared ? ofBatch : ofBox);
}

/** A column for each number drawn. */
function sharesAgain(
  taken: readonly number[],
  width: number,
  read: (index: number, out: Float64Array) => void,
): Float64Array[] {
  const columns = Array.from({ length: width }, () => new Float64Array(taken.length));
  const point = new Float64Array(width);
  taken.forEach((index, row) => {
    read(index, point);
    for (let d = 0; d < width; d++) (columns[d] as Float64Array)[row] = point[d] as number;
  });
  return columns;
}
