import type { Job } from '../../studies/job.ts';
import type { ReportQuestion } from '../reportJob.ts';
import type { WorkingReport } from './types.ts';
import { workingReport } from './workingReport.ts';

/** The working of one design, in one piece: the studies behind it take as long as those of the report. */
export const workingJob: Job<ReportQuestion, WorkingReport, WorkingReport | null> = {
  count: () => 1,
  piece: ({ design, prefs }) => workingReport(design, prefs.system),
  gather: (_, [piece = null]) => piece,
};
