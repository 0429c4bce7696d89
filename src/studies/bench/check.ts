import { toCore } from '../../model/toCore.ts';
import type { Job } from '../job.ts';
import { grouped, groupOf } from './benchModel.ts';
import { chiSquareOf } from './chiSquareOf.ts';
import { type Parts, partsOf, type Swing, swingsOf } from './modelScatter.ts';
import { readingsOf } from './readingsOf.ts';
import type {
  Agreement,
  BenchCheckResult,
  BenchQuestion,
  CheckedReading,
  Computed,
  ModelPart,
  Reading,
} from './types.ts';

/** Values of one group of equal conditions, and how far methods may be off there. */
export interface CheckPiece {
  readonly readings: readonly Reading[];
  readonly computed: readonly Computed[];
  readonly parts: Parts;
  readonly swings: readonly Swing[];
}

/** Readings of a prototype beside what is computed for them; one piece for every group of equal conditions. */
export const benchCheckJob: Job<BenchQuestion, CheckPiece, BenchCheckResult> = {
  count: ({ design }) => Math.max(1, grouped(readingsOf(design)).length),
  piece: ({ design }, index) => {
    const input = toCore(design);
    const readings = grouped(readingsOf(design))[index];
    if (!readings) return { readings: [], computed: [], parts: [], swings: [] };
    const group = groupOf(input, readings);
    const computed = group.compute(input);
    const parts = partsOf(design, group);
    return { readings, computed, parts, swings: swingsOf(input, group, parts, computed) };
  },
  gather: (_, pieces) => {
    const readings = pieces.flatMap(checkedReadings).sort((a, b) => a.index - b.index);
    const agreeing: Record<Agreement, number> = { instrument: 0, model: 0, disagrees: 0 };
    for (const { agreement } of readings) if (agreement) agreeing[agreement]++;
    const computed = readings.map(({ computed: value, why }) => ({ value, why }));
    return {
      readings,
      answered: readings.filter(({ agreement }) => agreement !== null).length,
      agreeing,
      chiSquare: chiSquareOf(readings, computed, 0),
      parts: allParts(pieces),
    };
  },
};

function checkedReadings({ readings, computed, swings }: CheckPiece): CheckedReading[] {
  return readings.map((reading, i) => {
    const { value, why } = computed[i] as Computed;
    if (value === null) return { ...reading, ...nothing, why };
    const squares = swings.map(({ part, moves }) => ({ part, square: (moves[i] ?? 0) ** 2 }));
    const variance = squares.reduce((sum, { square }) => sum + square, 0);
    const model = Math.sqrt(variance);
    const both = Math.hypot(reading.within, 2 * model);
    const deviation = reading.value - value;
    const size = Math.abs(deviation);
    return {
      ...reading,
      computed: value,
      why: null,
      deviation,
      times: deviation / reading.within,
      model,
      both,
      agreement: size <= reading.within ? 'instrument' : size <= both ? 'model' : 'disagrees',
      foremost: foremostOf(squares, variance),
    };
  });
}

const nothing = {
  computed: null,
  deviation: null,
  times: null,
  model: null,
  both: null,
  agreement: null,
  foremost: null,
} as const;

function foremostOf(
  squares: readonly { readonly part: ModelPart; readonly square: number }[],
  variance: number,
): CheckedReading['foremost'] {
  if (!(variance > 0)) return null;
  const most = squares.reduce((a, b) => (b.square > a.square ? b : a));
  return { part: most.part, share: most.square / variance };
}

/** Every part once, in the order in which groups name them. */
function allParts(pieces: readonly CheckPiece[]): Parts {
  const found = new Map(pieces.flatMap(({ parts }) => parts.map((part) => [part.part, part])));
  return [...found.values()];
}
