import type { Design } from '../model/design.ts';
import type { UnitSystem } from '../model/say.ts';
import type { StudyReport } from '../report/studyReport.ts';
import type { JobName, QuestionOf, ResultOf } from '../workers/studies/jobs.ts';
import type { Pool } from '../workers/studies/pool.ts';
import { changesStudy, compareStudy } from './changeStudies.ts';
import { gapLineStudy, gapMapStudy } from './gapStudies.ts';
import { fanStudy, finStudy, sizeStudy } from './sizingStudies.ts';

type Options = Readonly<Record<string, string>>;

/** One study as the terminal knows it. */
export interface StudyKind {
  /** For the help. */
  readonly says: string;
  readonly options: Options;
  /** @returns why it cannot be asked, where that is a text */
  readonly run: (
    pool: Pool,
    design: Design,
    options: Options,
    system: UnitSystem,
    /** A further design file; `null` where it cannot be had, the reason told. */
    open: (file: string) => Promise<Design | null>,
  ) => Promise<StudyReport | string>;
}

function kind<N extends JobName>(
  name: N,
  {
    says,
    options,
    ask,
    report,
  }: {
    readonly says: string;
    readonly options: Options;
    readonly ask: (design: Design, options: Options, system: UnitSystem) => QuestionOf<N> | string;
    readonly report: (question: QuestionOf<N>, result: ResultOf<N>, system: UnitSystem) => StudyReport;
  },
): StudyKind {
  return {
    says,
    options,
    run: async (pool, design, given, system) => {
      const question = ask(design, given, system);
      if (typeof question === 'string') return question;
      return report(question, await pool.run(name, question).result, system);
    },
  };
}

export const studyKinds: Readonly<Record<string, StudyKind>> = {
  gaps: kind('gaps', gapLineStudy),
  'gap-map': kind('gapMap', gapMapStudy),
  changes: kind('changes', changesStudy),
  compare: compareStudy,
  size: kind('sizing', sizeStudy),
  fins: kind('finSizing', finStudy),
  fans: kind('fanChoice', fanStudy),
};
