import { toCore } from '../../model/toCore.ts';
import type { Job } from '../job.ts';
import { advisedRuns, runnable } from './advisedRuns.ts';
import { benchModel } from './benchModel.ts';
import { candidatesOf } from './candidates.ts';
import { courseOf } from './courses.ts';
import { readingsOf, tellsOfUnknowns } from './readingsOf.ts';
import { slopesOf } from './slopesOf.ts';
import {
  type AdvisedRun,
  allUnknowns,
  type BenchAdviceQuestion,
  type BenchAdviceResult,
  type Candidate,
  type Course,
  type NoAnswer,
  type Unknown,
} from './types.ts';
import { fittedUnknowns } from './unknowns.ts';
import { adviseMore, knowledgeFrom, leavesOf } from './worth.ts';

/** What one way of running the box offers, or what the readings that are there tell. */
export type AdvicePiece =
  | {
      readonly is: 'run';
      readonly candidates: readonly Candidate[];
      readonly course: Course | null;
      readonly cannot: { readonly run: AdvisedRun; readonly why: NoAnswer } | null;
    }
  | { readonly is: 'readings'; readonly rows: readonly (readonly number[])[] };

/** What a reading would tell: one piece for every way of running the box, and one for the readings that are there. */
export const benchAdviceJob: Job<BenchAdviceQuestion, AdvicePiece, BenchAdviceResult> = {
  count: () => advisedRuns.length + 1,
  piece: (question, index) => {
    const run = advisedRuns[index];
    return run ? offered(question, run) : alreadyThere(question);
  },
  gather: (question, pieces) => {
    const unknowns = askedOf(question);
    const runs = pieces.flatMap((piece) => (piece.is === 'run' ? [piece] : []));
    const rows = pieces.flatMap((piece) => (piece.is === 'readings' ? piece.rows : []));
    const candidates = runs.flatMap((piece) => piece.candidates);
    const known = knowledgeFrom(unknowns, rows);
    return {
      unknowns,
      candidates,
      now: leavesOf(known),
      // What is there counts: advice waits for it.
      advised: pieces.length > advisedRuns.length ? adviseMore(known, candidates) : [],
      courses: runs.flatMap(({ course }) => course ?? []),
      cannot: runs.flatMap(({ cannot }) => cannot ?? []),
    };
  },
};

/** Those asked for that the design has; all of them where none are named. */
function askedOf({ design, unknowns = allUnknowns }: BenchAdviceQuestion): Unknown[] {
  const input = toCore(design);
  return unknowns.filter((unknown) => fittedUnknowns[unknown].read(input) !== null);
}

function offered(question: BenchAdviceQuestion, run: AdvisedRun): AdvicePiece {
  const input = toCore(question.design);
  const can = runnable(input, run);
  if (!can.ok) return { is: 'run', candidates: [], course: null, cannot: { run, why: can.why } };
  const candidates = candidatesOf(input, run, can.conditions, askedOf(question));
  return { is: 'run', candidates, course: courseOf(can.bench, run, candidates), cannot: null };
}

function alreadyThere(question: BenchAdviceQuestion): AdvicePiece {
  const input = toCore(question.design);
  const readings = readingsOf(question.design).filter(tellsOfUnknowns);
  const { compute } = benchModel(input, readings);
  const slopes = slopesOf(input, askedOf(question), compute);
  const rows = readings.map(({ within }, row) => slopes.map((slope) => (2 * (slope?.[row] ?? 0)) / within));
  return { is: 'readings', rows };
}
