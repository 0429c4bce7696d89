import type { Job } from '../job.ts';
import { judgedOf } from '../outputs.ts';
import { type Columns, createColumns, writeJudged } from './columns.ts';
import { gatherTolerance } from './gather.ts';
import { prepared } from './prepared.ts';
import { drawsOf, type ToleranceQuestion } from './question.ts';
import type { ToleranceResult } from './result.ts';

/** Boxes of one piece. */
const perPiece = 200;

/** Draws boxes as they may come out and solves each. The answer depends on question and seed alone, not on who computes what. */
export const toleranceJob: Job<ToleranceQuestion, Columns, ToleranceResult> = {
  count: (question) => Math.ceil(drawsOf(question) / perPiece),
  piece: (question, index) => {
    const { sampler, solve, pulsing } = prepared(question);
    const from = index * perPiece;
    const columns = createColumns(Math.min(perPiece, drawsOf(question) - from));
    for (let i = 0; i < columns.count; i++) {
      writeJudged(columns, i, judgedOf(solve(sampler.inputAt(from + i)), pulsing));
      if (sampler.wasMoved()) columns.moved++;
    }
    return columns;
  },
  gather: gatherTolerance,
};
