import type { Design } from '../model/design.ts';
import { readWhole } from '../model/readWhole.ts';
import type { UnitSystem } from '../model/say.ts';
import type { StudyReport } from '../report/studyReport.ts';
import { toleranceReport } from '../report/tolerance/toleranceReport.ts';
import { fewestDraws, mostBoxes, mostDraws, mostSeed } from '../studies/tolerance/question.ts';
import type { JobName, QuestionOf, ResultOf } from '../workers/studies/jobs.ts';
import type { Pool } from '../workers/studies/pool.ts';

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
    readonly ask: (design: Design, options: Options) => QuestionOf<N> | string;
    readonly report: (question: QuestionOf<N>, result: ResultOf<N>, system: UnitSystem) => StudyReport;
  },
): StudyKind {
  return {
    says,
    options,
    run: async (pool, design, given, system) => {
      const question = ask(design, given);
      if (typeof question === 'string') return question;
      return report(question, await pool.run(name, question).result, system);
    },
  };
}

const parts = kind('tolerance', {
  says: 'How many boxes hold as parts vary?',
  options: {
    draws: 'boxes to draw, 10000 unless told',
    seed: 'a whole number; the same one draws the same boxes',
    boxes: 'built together; the design’s own number unless told',
    methods: 'no: methods are taken as exact',
  },
  ask: (design, { draws = '10000', seed = '1', boxes = `${design.cutting.boxes}`, methods = 'yes' }) => {
    const read = [
      ['draws', readWhole(draws, fewestDraws, mostDraws)],
      ['seed', readWhole(seed, 0, mostSeed)],
      ['boxes', readWhole(boxes, 1, mostBoxes)],
    ] as const;
    for (const [name, each] of read) if (!each.ok) return `${name}=: ${each.reason}`;
    return {
      design,
      draws: Number(draws),
      seed: Number(seed),
      boxes: Number(boxes),
      methods: methods !== 'no',
    };
  },
  report: ({ design }, result, system) => toleranceReport(design, result, system),
});

export const studyKinds: Readonly<Record<string, StudyKind>> = { parts };
