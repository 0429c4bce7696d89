import { fansStopped, ordinaryRun } from '../../core/system/input.ts';
import type { Outcome } from '../../core/system/outcome.ts';
import { solveSystem } from '../../core/system/solveSystem.ts';
import type { Design } from '../../model/design.ts';
import { toCore } from '../../model/toCore.ts';
import type { Job } from '../job.ts';
import { type RatedLoad, ratedFrom, ratedLoad } from '../ratedLoad.ts';

/** As many designs as are read side by side. */
export const mostCompared = 6;

export interface CompareQuestion {
  /** The one on the bench, to which the others are compared. */
  readonly design: Design;
  readonly others: readonly Design[];
}

/** What becomes of one design. */
export interface Compared {
  readonly outcome: Outcome;
  /** Watts it may carry with fans and without; `null` where nothing bounds them or there is no answer. */
  readonly running: RatedLoad | null;
  readonly stopped: RatedLoad | null;
}

/** Designs side by side, the one on the bench first; one piece each. */
export const compareJob: Job<CompareQuestion, Compared, readonly Compared[]> = {
  count: ({ others }) => 1 + others.length,
  piece: ({ design, others }, index) => compared(index === 0 ? design : (others[index - 1] as Design)),
  gather: (_, pieces) => pieces,
};

function compared(design: Design): Compared {
  const input = toCore(design);
  const outcome = solveSystem(input);
  const stopped = solveSystem(input, fansStopped);
  return {
    outcome,
    running: outcome.ok ? ratedFrom(outcome, input, ordinaryRun) : ratedLoad(input, ordinaryRun),
    stopped: stopped.ok ? ratedFrom(stopped, input, fansStopped) : ratedLoad(input, fansStopped),
  };
}
