import type { Design } from '../model/design.ts';
import { readWhole } from '../model/readWhole.ts';
import type { UnitSystem } from '../model/say.ts';
import { toleranceReport } from '../report/tolerance/toleranceReport.ts';
import {
  fewestDraws,
  mostBoxes,
  mostDraws,
  mostSeed,
  type ToleranceQuestion,
} from '../studies/tolerance/question.ts';
import type { ToleranceResult } from '../studies/tolerance/result.ts';

type Options = Readonly<Record<string, string>>;

/** How many boxes hold as parts vary. */
export const toleranceStudy = {
  says: 'How many boxes hold as parts vary, and which spread matters most.',
  options: {
    draws: 'boxes to draw; 10000 where not given',
    seed: 'a whole number, the same one draws the same boxes; 1 where not given',
    boxes: 'built together; as many as the design wants cut where not given',
    methods: '"no" takes methods as exact',
  },
  ask: (design: Design, options: Options): ToleranceQuestion | string => {
    const { draws = '10000', seed = '1', boxes = `${design.cutting.boxes}`, methods = 'yes' } = options;
    const read = [
      ['draws', readWhole(draws, fewestDraws, mostDraws)],
      ['seed', readWhole(seed, 0, mostSeed)],
      ['boxes', readWhole(boxes, 1, mostBoxes)],
    ] as const;
    for (const [name, each] of read) if (!each.ok) return `${name}=: ${each.reason}`;
    if (methods !== 'yes' && methods !== 'no') return 'methods= is yes or no.';
    return {
      design,
      draws: Number(draws),
      seed: Number(seed),
      boxes: Number(boxes),
      methods: methods === 'yes',
    };
  },
  report: ({ design }: ToleranceQuestion, result: ToleranceResult, system: UnitSystem) =>
    toleranceReport(design, result, system),
};
