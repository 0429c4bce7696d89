import { reportJob } from '../../report/reportJob.ts';
import { workingJob } from '../../report/working/workingJob.ts';
import { benchAdviceJob } from '../../studies/bench/advice.ts';
import { benchCheckJob } from '../../studies/bench/check.ts';
import { benchCourseJob } from '../../studies/bench/course.ts';
import { benchFitJob } from '../../studies/bench/fit.ts';
import { changesJob } from '../../studies/changes/changes.ts';
import { compareJob } from '../../studies/compare/compare.ts';
import { gapLineJob } from '../../studies/gaps/gapLine.ts';
import { gapMapJob } from '../../studies/gaps/gapMap.ts';
import type { Job } from '../../studies/job.ts';
import { fanChoiceJob } from '../../studies/sizing/fanChoice.ts';
import { finSizingJob } from '../../studies/sizing/finSizing.ts';
import { sizingJob } from '../../studies/sizing/sizing.ts';
import { toleranceJob } from '../../studies/tolerance/toleranceJob.ts';

/** Everything that workers can be asked. A new study is one line here. */
export const jobs = {
  report: reportJob,
  working: workingJob,
  sizing: sizingJob,
  finSizing: finSizingJob,
  fanChoice: fanChoiceJob,
  tolerance: toleranceJob,
  changes: changesJob,
  compare: compareJob,
  gaps: gapLineJob,
  gapMap: gapMapJob,
  benchCheck: benchCheckJob,
  benchCourse: benchCourseJob,
  benchFit: benchFitJob,
  benchAdvice: benchAdviceJob,
} as const;

export type Jobs = typeof jobs;
export type JobName = keyof Jobs;

type PartsOf<J> =
  J extends Job<infer Question, infer Piece, infer Result> ? [Question, Piece, Result] : never;
export type QuestionOf<N extends JobName> = PartsOf<Jobs[N]>[0];
export type ResultOf<N extends JobName> = PartsOf<Jobs[N]>[2];
