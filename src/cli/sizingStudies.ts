import { askedSizing } from '../io/sizingForm.ts';
import type { Design } from '../model/design.ts';
import type { UnitSystem } from '../model/say.ts';
import { fanChoiceReport } from '../report/sizing/fanChoiceReport.ts';
import { finSizingReport } from '../report/sizing/finSizingReport.ts';
import { sizingReport } from '../report/sizing/sizingReport.ts';
import type { FanQuestion } from '../studies/sizing/fanChoice.ts';
import { fansAtHand } from '../studies/sizing/fansAtHand.ts';
import type { FinQuestion } from '../studies/sizing/finSizing.ts';
import type { SizingQuestion } from '../studies/sizing/sizing.ts';
import type { Target } from '../studies/sizing/target.ts';

type Options = Readonly<Record<string, string>>;

const asks: readonly string[] = ['spare', 'everyLimit', 'film'];

const targetOptions = {
  ask: `what is asked, one of ${asks.join(', ')}; the spare wanted where not given`,
  margin: 'kelvin below every limit, or below the film’s; 10 where not given',
};

/** How far each measure may go. */
export const sizeStudy = {
  says: 'How far each measure may go by itself before a target is missed.',
  options: targetOptions,
  ask: (design: Design, options: Options, system: UnitSystem): SizingQuestion | string => {
    const { target, problem } = askedOf(design, options, system);
    return target === null ? problem : { design, target };
  },
  report: sizingReport,
};

/** The best fins. */
export const finStudy = {
  says: 'The best fins by the workshop’s rules, and what less sound or pressure costs.',
  options: {
    ...targetOptions,
    cutters: 'end mills at hand, such as "2, 3"; that of the panels where not given',
    depth: 'most diameters that a slot is deep',
    thicknesses: 'fins to choose from, such as "0.8, 1/32 in, 1"',
    thinnest: 'no fin thinner than this',
    least: 'fins at least so high',
    most: 'fins at most so high',
    sound: 'at most so loud',
    pressure: 'at most so much asked of the fan',
  },
  ask: (design: Design, options: Options, system: UnitSystem): FinQuestion | string => {
    const { target, rules, problem } = askedOf(design, options, system);
    return target === null || rules === null ? problem : { design, target, rules };
  },
  report: finSizingReport,
};

/** The smallest fan. */
export const fanStudy = {
  says: 'The smallest of the design’s own fans that reaches a target, alone.',
  options: targetOptions,
  ask: (design: Design, options: Options, system: UnitSystem): FanQuestion | string => {
    const { target, problem } = askedOf(design, options, system);
    return target === null ? problem : { design, target, fans: fansAtHand([design]) };
  },
  report: fanChoiceReport,
};

/** What is asked by options; `problem` says which of them does not read. */
function askedOf(design: Design, { ask = 'spare', ...texts }: Options, system: UnitSystem) {
  if (!asks.includes(ask))
    return { target: null, rules: null, problem: `ask= is one of ${asks.join(', ')}.` };
  const { boxes, target, rules } = askedSizing({ ask: ask as Target['ask'], texts }, design, system);
  const [key, box] = Object.entries(boxes).find(([, { problem }]) => problem !== null) ?? [];
  return { target, rules, problem: box ? `${key}=: ${box.problem}` : '' };
}
