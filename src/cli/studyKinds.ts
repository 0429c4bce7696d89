import { askedSizing } from '../io/sizingForm.ts';
import type { Design } from '../model/design.ts';
import type { UnitSystem } from '../model/say.ts';
import { fanChoiceReport } from '../report/fanChoiceReport.ts';
import { finSizingReport } from '../report/finSizingReport.ts';
import { sizingReport } from '../report/sizingReport.ts';
import type { StudyReport } from '../report/studyReport.ts';
import { fansAtHand } from '../studies/sizing/fansAtHand.ts';
import type { Target } from '../studies/sizing/target.ts';
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

const targetOptions = {
  ask: 'what is asked: spare (as the design wants it), everyLimit or film',
  margin: 'kelvin below every limit, or below the film’s; 10 where nothing is said',
};

export const studyKinds: Readonly<Record<string, StudyKind>> = {
  size: kind('sizing', {
    says: 'how far each measure may go before a target is missed',
    options: targetOptions,
    ask: (design, options) => {
      const { target, problem } = askedOf(design, options);
      return target === null ? problem : { design, target };
    },
    report: sizingReport,
  }),
  fins: kind('finSizing', {
    says: 'the best fins by the workshop’s rules',
    options: {
      ...targetOptions,
      cutters: 'end mills at hand, as 2, 3',
      depth: 'most diameters that a slot is deep',
      thicknesses: 'fin thicknesses to choose from',
      thinnest: 'no fin thinner than this',
      least: 'fins at least so high',
      most: 'fins at most so high',
      sound: 'at most so loud',
      pressure: 'at most so much asked of the fan',
    },
    ask: (design, options) => {
      const { target, rules, problem } = askedOf(design, options);
      return target === null || rules === null ? problem : { design, target, rules };
    },
    report: finSizingReport,
  }),
  fans: kind('fanChoice', {
    says: 'the smallest of the design’s own fans that reaches a target, alone',
    options: targetOptions,
    ask: (design, options) => {
      const { target, problem } = askedOf(design, options);
      return target === null ? problem : { design, target, fans: fansAtHand([design]) };
    },
    report: fanChoiceReport,
  }),
};

const asks: readonly string[] = ['spare', 'everyLimit', 'film'];

/** What a sizing is asked by options; `problem` says what does not read. */
function askedOf(design: Design, { ask = 'spare', ...texts }: Options) {
  if (!asks.includes(ask))
    return { target: null, rules: null, problem: `ask= is one of ${asks.join(', ')}.` };
  const { boxes, target, rules } = askedSizing({ ask: ask as Target['ask'], texts }, design, 'metric');
  const wrong = Object.entries(boxes).find(([, { problem }]) => problem !== null);
  return { target, rules, problem: wrong ? `${wrong[0]}= ${wrong[1].problem}` : '' };
}
