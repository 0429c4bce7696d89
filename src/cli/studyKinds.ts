import type { Design } from '../model/design.ts';

import type { UnitSystem } from '../model/say.ts';
import { changesReport } from '../report/changes/changesReport.ts';
import { compareReport } from '../report/compare/compareReport.ts';
import type { StudyReport } from '../report/studyReport.ts';
import { mostCompared } from '../studies/compare/compare.ts';
import type { JobName, QuestionOf, ResultOf } from '../workers/studies/jobs.ts';
import type { Pool } from '../workers/studies/pool.ts';
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

const changes = kind('changes', {
  says: 'what to change first: everything that could be done, by kelvin gained',
  options: {},
  ask: (design) => ({ design }),
  report: ({ design }, result, system) =>
    result === null
      ? { sentence: 'No answer.', remarks: [], tables: [] }
      : changesReport(design, result, system),
});

const compare: StudyKind = {
  says: 'designs side by side: what differs, and what follows',
  options: { with: `further design files, separated by commas, ${mostCompared - 1} at most` },
  run: async (pool, design, options, system, open) => {
    const files = (options.with ?? '').split(',').filter((file) => file !== '');
    if (files.length === 0) return 'Compare with what? Name design files after with=.';
    if (files.length > mostCompared - 1) return `At most ${mostCompared - 1} designs beside the first.`;
    const others: Design[] = [];
    for (const file of files) {
      const other = await open(file);
      if (other === null) return `${file} was not opened.`;
      others.push(other);
    }
    const question = { design, others };
    return compareReport(question, await pool.run('compare', question).result, system);
  },
};

export const studyKinds: Readonly<Record<string, StudyKind>> = {
  gaps: kind('gaps', gapLineStudy),
  'gap-map': kind('gapMap', gapMapStudy),
  changes,
  compare,
  size: kind('sizing', sizeStudy),
  fins: kind('finSizing', finStudy),
  fans: kind('fanChoice', fanStudy),
};
