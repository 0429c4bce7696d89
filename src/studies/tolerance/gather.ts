import { withoutFactor } from '../../core/system/methodScatter.ts';
import type { LimitKey } from '../../core/system/outcome.ts';
import { type Columns, joinColumns, keptOutputs, limitOrder, outcomes } from './columns.ts';
import { shareOf, togetherOf } from './estimate.ts';
import { influences } from './influences.ts';
import { prepared } from './prepared.ts';
import { boxesOf, drawsOf, type ToleranceQuestion } from './question.ts';
import type { ToleranceResult } from './result.ts';
import { figureSpread, histogram } from './summaries.ts';

const failed = outcomes.indexOf('fails');
/** A running estimate is made often, of no more boxes than these. */
const forEstimate = 4000;

/** From all boxes the answer, from fewer of them a running estimate without what matters most. */
export function gatherTolerance(question: ToleranceQuestion, pieces: readonly Columns[]): ToleranceResult {
  const columns = joinColumns(pieces);
  const { outcome, moved } = columns;
  const of = drawsOf(question);
  const boxes = boxesOf(question.boxes);
  const known = prepared(question);
  const holds = Uint8Array.from(outcome, (each) => Number(each > failed));
  const isWhole = columns.count === of;
  const answered = placesOfAnswers(outcome, isWhole ? of : forEstimate);
  const pick = (values: ArrayLike<number>) => Float64Array.from(answered, (i) => values[i] as number);
  const influence = isWhole ? influences(question, known, columns, holds) : { draws: 0, list: [] };
  return {
    seed: question.seed,
    boxes,
    draws: columns.count,
    of,
    holds: shareOf(holds, boxes),
    withSpare: shareWhere(outcome, (each) => each === outcomes.indexOf('holds')),
    noAnswer: shareWhere(outcome, (each) => each === outcomes.indexOf('noAnswer')),
    failing: failing(columns),
    figures: keptOutputs.flatMap(
      (key) => figureSpread(key, pick(columns.figures[key]), known.nominal?.outputs[key] ?? null) ?? [],
    ),
    margin: histogram(
      pick(columns.figures.filmMargin_K),
      Uint8Array.from(answered, (i) => holds[i] as number),
    ),
    influences: influence.list,
    influenceDraws: influence.draws,
    together: togetherOf(holds, boxes),
    moved,
    dimensions: known.variations.drawn.length,
    nominal: known.nominal,
    methods: known.variations.list.flatMap((each) => (each.is === 'method' ? [each.scatter.factor] : [])),
    undrawn: question.methods ? withoutFactor(known.variations.used).map(({ id }) => id) : [],
  };
}

/** Boxes with an answer, the first of them. */
function placesOfAnswers(outcome: Uint8Array, most: number): Uint32Array {
  const places = new Uint32Array(Math.min(most, outcome.length));
  let found = 0;
  for (let i = 0; i < outcome.length && found < most; i++) if (outcome[i]) places[found++] = i;
  return places.subarray(0, found);
}

function shareWhere(values: Uint8Array, is: (value: number) => boolean): number {
  if (values.length === 0) return 0;
  return values.reduce((sum, value) => sum + Number(is(value)), 0) / values.length;
}

function failing({ outcome, limit }: Columns): { limit: LimitKey; count: number }[] {
  const counts = new Map<LimitKey, number>();
  outcome.forEach((each, i) => {
    if (each !== failed) return;
    const key = limitOrder[limit[i] as number] as LimitKey;
    counts.set(key, (counts.get(key) ?? 0) + 1);
  });
  return Array.from(counts, ([key, count]) => ({ limit: key, count })).sort((a, b) => b.count - a.count);
}
