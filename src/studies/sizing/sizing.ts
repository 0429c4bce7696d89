import type { Design } from '../../model/design.ts';
import type { Job } from '../job.ts';
import type { Edge } from './findEdge.ts';
import { sizeOne } from './sizeOne.ts';
import { type SizerId, sizersOf } from './sizers.ts';
import { type Standing, standingOf, withPulses } from './standing.ts';
import type { Target } from './target.ts';

export interface SizingQuestion {
  readonly design: Design;
  readonly target: Target;
}

export interface Sized {
  readonly id: SizerId;
  readonly now: number;
  readonly want: 'most' | 'least';
  readonly edge: Edge;
}

export interface SizingResult {
  /** How the design stands to the target as it is. */
  readonly now: Standing | null;
  readonly sized: readonly Sized[];
}

type Piece = { readonly now: Standing } | { readonly sized: Sized };

/** How far each measure of a design may go by itself before the target is missed. */
export const sizingJob: Job<SizingQuestion, Piece, SizingResult> = {
  count: ({ design }) => 1 + sizersOf(design).length,
  piece: ({ design, target }, index) => {
    const sizer = sizersOf(design)[index - 1];
    if (sizer === undefined) return { now: standingOf(design, target, withPulses) };
    const { id, now, want } = sizer;
    return { sized: { id, now, want, edge: sizeOne(design, target, sizer) } };
  },
  gather: (_, pieces) => {
    let now: Standing | null = null;
    const sized: Sized[] = [];
    for (const piece of pieces) {
      if ('now' in piece) now = piece.now;
      else sized.push(piece.sized);
    }
    return { now, sized };
  },
};
