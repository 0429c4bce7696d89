import type { Design } from '../model/design.ts';
import type { UnitSystem } from '../model/say.ts';
import type { StudyReport } from '../report/studyReport.ts';
import type { JobName, QuestionOf, ResultOf } from '../workers/studies/jobs.ts';
import { adviceStudy, checkStudy, fitStudy } from './benchStudies.ts';
import { changesStudy, compareStudy } from './changeStudies.ts';
import { gapLineStudy, gapMapStudy } from './gapStudies.ts';
import { fanStudy, finStudy, sizeStudy } from './sizingStudies.ts';
import type { Options, StudyKind } from './studyKind.ts';
import { toleranceStudy } from './toleranceStudy.ts';

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
  parts: kind('tolerance', toleranceStudy),
  bench: checkStudy,
  'bench-fit': fitStudy,
  'bench-advice': kind('benchAdvice', adviceStudy),
};
