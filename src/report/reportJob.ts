import type { Outcome } from '../core/system/outcome.ts';
import { solveSystem } from '../core/system/solveSystem.ts';
import type { Design } from '../model/design.ts';
import { designChecksum } from '../model/designChecksum.ts';
import { toCore } from '../model/toCore.ts';
import type { Job } from '../studies/job.ts';
import { buildReport } from './buildReport.ts';
import type { Report, ReportPrefs } from './types.ts';

export interface ReportQuestion {
  readonly design: Design;
  readonly prefs: ReportPrefs;
}

/** A report and the answer it was made from. */
export interface Reported {
  readonly report: Report;
  readonly outcome: Outcome;
}

export function reported({ design, prefs }: ReportQuestion): Reported {
  const outcome = solveSystem(toCore(design));
  return { report: buildReport(design, outcome, { ...prefs, checksum: designChecksum(design) }), outcome };
}

/** The whole report of one design, in one piece: some forty solves, too many for the thread that takes the keys. */
export const reportJob: Job<ReportQuestion, Reported, Reported | null> = {
  count: () => 1,
  piece: reported,
  gather: (_, [piece = null]) => piece,
};
