import type { LimitKey, LimitState } from '../../core/system/outcome.ts';
import type { Judged, OutputKey, Outputs } from '../outputs.ts';

/** What is kept of every box drawn. */
const outputKeys: Readonly<Record<OutputKey, true>> = {
  film_K: true,
  filmMargin_K: true,
  loadFactor: true,
  flow_m3PerS: true,
  fanPressure_Pa: true,
  finShare: true,
  sound_dBA: true,
  joint_K: true,
  bond_K: true,
  plate_K: true,
  exhaust_K: true,
};
export const keptOutputs = Object.keys(outputKeys) as OutputKey[];

/** How a box came out, one byte each. */
export const outcomes = ['noAnswer', 'fails', 'little', 'holds'] as const satisfies readonly (
  | LimitState
  | 'noAnswer'
)[];

const limitKeys: Readonly<Record<LimitKey, true>> = {
  film: true,
  pulse: true,
  derating: true,
  joint: true,
  bond: true,
  touch: true,
  sheet: true,
  wall: true,
  sound: true,
  exhaust: true,
  voltage: true,
  stall: true,
  ratedPower: true,
};
export const limitOrder = Object.keys(limitKeys) as LimitKey[];

/** Boxes one after the other, a column for each figure: 90 bytes a box. */
export interface Columns {
  readonly count: number;
  /** Nothing meaningful where there is no answer. */
  readonly figures: Readonly<Record<OutputKey, Float64Array>>;
  /** Place in `outcomes`. */
  readonly outcome: Uint8Array;
  /** Place in `limitOrder` of the limit that gives first. */
  readonly limit: Uint8Array;
  /** Boxes that could not be built as drawn. */
  readonly moved: number;
}

export interface WritableColumns {
  readonly count: number;
  readonly figures: Record<OutputKey, Float64Array>;
  readonly outcome: Uint8Array;
  readonly limit: Uint8Array;
  moved: number;
}

export function createColumns(count: number): WritableColumns {
  const figures = Object.fromEntries(keptOutputs.map((key) => [key, new Float64Array(count)]));
  return {
    count,
    figures: figures as Record<OutputKey, Float64Array>,
    outcome: new Uint8Array(count),
    limit: new Uint8Array(count),
    moved: 0,
  };
}

export function writeJudged(columns: WritableColumns, at: number, judged: Judged | null): void {
  if (judged === null) return;
  for (const key of keptOutputs) columns.figures[key][at] = judged.outputs[key as keyof Outputs];
  columns.outcome[at] = outcomes.indexOf(judged.state);
  columns.limit[at] = limitOrder.indexOf(judged.limit);
}

export function joinColumns(pieces: readonly Columns[]): Columns {
  const joined = createColumns(pieces.reduce((sum, { count }) => sum + count, 0));
  let at = 0;
  for (const piece of pieces) {
    for (const key of keptOutputs) joined.figures[key].set(piece.figures[key], at);
    joined.outcome.set(piece.outcome, at);
    joined.limit.set(piece.limit, at);
    joined.moved += piece.moved;
    at += piece.count;
  }
  return joined;
}
