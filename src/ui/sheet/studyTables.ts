import { gapMapReport } from '../../report/gaps/gapMapReport.ts';
import { gapReport } from '../../report/gaps/gapReport.ts';
import { saysTable } from '../../report/studyReport.ts';
import type { TextTable } from '../../report/types.ts';
import type { DesignStore } from '../../store/designStore.ts';
import { type Studies, type StudyState, studyAt } from '../../store/studies.ts';
import type { JobName } from '../../workers/studies/jobs.ts';
import { keptEvidence } from '../questions/evidence/keptEvidence.ts';

/** What further pages print of studies; empty for one that is not answered for the design on the bench. */
export interface StudyTables {
  readonly gaps: readonly TextTable[];
  /** The published checks, once they were fetched. */
  readonly evidence: readonly TextTable[];
}

export function studyTables(bench: DesignStore | null, studies: Studies | null): StudyTables {
  const evidence = keptEvidence()?.tables ?? [];
  if (bench === null || studies === null) return { gaps: [], evidence };
  const { solvedDesign, system } = bench.getState();
  const states = studies.store.getState();
  const isOfBench = ({ answers, isEstimate }: StudyState<JobName>) =>
    !isEstimate && answers !== null && 'design' in answers && answers.design === solvedDesign;
  const [line, map] = [studyAt(states, 'gaps'), studyAt(states, 'gapMap')];
  const reports = [
    ...(isOfBench(line) && line.result && line.answers ? [gapReport(line.answers, line.result, system)] : []),
    ...(isOfBench(map) && map.result && map.answers ? [gapMapReport(map.answers, map.result, system)] : []),
  ];
  return {
    evidence,
    gaps: reports.flatMap((report, i) => [
      saysTable(`gapSays${i}`, i === 0 ? 'What to cut' : 'Two gaps', report),
      ...report.tables,
    ]),
  };
}
