import type { Design } from '../../model/design.ts';
import { benchLine } from '../../report/bench/benchLine.ts';
import { checkReport, withFit } from '../../report/bench/checkReport.ts';
import { fitReport } from '../../report/bench/fitReport.ts';
import type { ResidualChart } from '../../report/bench/residualChart.ts';
import { gapMapReport } from '../../report/gaps/gapMapReport.ts';
import { gapReport } from '../../report/gaps/gapReport.ts';
import { saysTable } from '../../report/studyReport.ts';
import type { TextTable, UnitSystem } from '../../report/types.ts';
import type { WorkingReport } from '../../report/working/types.ts';
import type { DesignStore } from '../../store/designStore.ts';
import { isSameBox } from '../../store/isOfThisBox.ts';
import { type Studies, type StudyState, studyAt } from '../../store/studies.ts';
import type { JobName } from '../../workers/studies/jobs.ts';
import { keptEvidence } from '../questions/evidence/keptEvidence.ts';

/** What further pages print of studies; empty for one that is not answered for the design on the bench. */
export interface StudyTables {
  readonly gaps: readonly TextTable[];
  readonly bench: readonly TextTable[];
  /** How far readings are off, before a fit and after it. */
  readonly residuals: readonly ResidualChart[];
  /** What the bench says, in a line for the summary; empty where nothing was read or fitted. */
  readonly benchSays: string;
  /** The published checks, once they were fetched. */
  readonly evidence: readonly TextTable[];
  /** Of the present answer; `null` where those pages are not printed. */
  readonly working: WorkingReport | null;
}

/** Of a page on which nothing was studied. */
export const noStudies: StudyTables = {
  gaps: [],
  bench: [],
  residuals: [],
  benchSays: '',
  evidence: [],
  working: null,
};

export function studyTables(
  bench: DesignStore | null,
  studies: Studies | null,
  working: WorkingReport | null,
): StudyTables {
  const evidence = keptEvidence()?.tables ?? [];
  if (bench === null || studies === null) return { ...noStudies, evidence, working };
  const { solvedDesign, system } = bench.getState();
  const states = studies.store.getState();
  const isOfBench = ({ answers, isEstimate }: StudyState<JobName>) =>
    !isEstimate && answers !== null && 'design' in answers && answers.design === solvedDesign;
  const isOfBox = ({ answers, isEstimate }: StudyState<JobName>) =>
    !isEstimate && answers !== null && 'design' in answers && isSameBox(answers.design, solvedDesign);
  const [line, map] = [studyAt(states, 'gaps'), studyAt(states, 'gapMap')];
  const reports = [
    ...(isOfBox(line) && line.result && line.answers ? [gapReport(line.answers, line.result, system)] : []),
    ...(isOfBox(map) && map.result && map.answers ? [gapMapReport(map.answers, map.result, system)] : []),
  ];
  return {
    working,
    evidence,
    gaps: reports.flatMap((report, i) => [
      saysTable(`gapSays${i}`, i === 0 ? 'What to cut' : 'Two gaps', report),
      ...report.tables,
    ]),
    ...benchPages(states, solvedDesign, system, isOfBench),
  };
}

/** Readings beside computed values, and what was fitted to them; charts stand apart from tables. */
function benchPages(
  states: Parameters<typeof studyAt>[0],
  design: Design,
  system: UnitSystem,
  isOfBench: (state: StudyState<JobName>) => boolean,
): Pick<StudyTables, 'bench' | 'residuals' | 'benchSays'> {
  const check = answered(studyAt(states, 'benchCheck'), isOfBench);
  const course = answered(studyAt(states, 'benchCourse'), isOfBench);
  const fit = answered(studyAt(states, 'benchFit'), isOfBench);
  const checked = check && checkReport(check.question, check.result, system, course?.result ?? null);
  const fitted = fit && fitReport(fit.question, fit.result, system);
  // The chart of a fit shows what was before it, too.
  const residuals = fitted?.residuals ?? checked?.residuals ?? null;
  const asDrawn = ['benchResiduals', 'benchFitResiduals'];
  return {
    bench: [
      ...(checked
        ? [saysTable('benchSays', 'Does the bench agree?', withFit(checked)), ...checked.tables]
        : []),
      ...(fitted
        ? [saysTable('benchFitSays', 'What explains the difference', fitted), ...fitted.tables]
        : []),
    ].filter(({ id }) => !asDrawn.includes(id)),
    residuals: residuals === null ? [] : [residuals],
    benchSays: benchLine(design, check?.result ?? null, system),
  };
}

function answered<N extends JobName>(
  { result, answers, ...state }: StudyState<N>,
  isOfBench: (state: StudyState<JobName>) => boolean,
): { readonly question: NonNullable<typeof answers>; readonly result: NonNullable<typeof result> } | null {
  const isThere =
    result !== null && answers !== null && isOfBench({ result, answers, ...state } as StudyState<JobName>);
  return isThere ? { question: answers, result: result as NonNullable<typeof result> } : null;
}
