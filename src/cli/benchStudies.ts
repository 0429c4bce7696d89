import type { Design } from '../model/design.ts';
import { readingCount } from '../model/readings.ts';
import type { UnitSystem } from '../model/say.ts';
import { adviceReport } from '../report/bench/adviceReport.ts';
import { checkReport, withFit } from '../report/bench/checkReport.ts';
import { fitReport } from '../report/bench/fitReport.ts';
import {
  allUnknowns,
  type BenchAdviceQuestion,
  type BenchFitQuestion,
  type BenchQuestion,
  mostUnknowns,
  type Unknown,
} from '../studies/bench/types.ts';
import type { Options, StudyKind } from './studyKind.ts';

const noReadings = 'This design has no readings. Put them in on the page, under “Does the bench agree?”.';
const names = allUnknowns.join(', ');

/** Readings of a prototype beside computed values. */
export const checkStudy: StudyKind = {
  says: 'Readings of a prototype beside what is computed: which agree, and what runs off.',
  options: {},
  run: async (pool, design, _, system) => {
    if (readingCount(design) === 0) return noReadings;
    const question: BenchQuestion = { design };
    const result = await pool.run('benchCheck', question).result;
    return withFit(checkReport(question, result, system, await pool.run('benchCourse', question).result));
  },
};

/** What explains the difference; where readings do not tell, what to add. */
export const fitStudy: StudyKind = {
  says: 'What explains the difference between readings and model, fitted.',
  options: { unknowns: `up to ${mostUnknowns} of ${names}; bond where not given` },
  run: async (pool, design, { unknowns = 'bond' }, system) => {
    if (readingCount(design) === 0) return noReadings;
    const chosen = readUnknowns(unknowns);
    if (typeof chosen === 'string') return chosen;
    const question: BenchFitQuestion = { design, unknowns: chosen };
    const result = await pool.run('benchFit', question).result;
    const advice = result.refused === null ? null : await pool.run('benchAdvice', question).result;
    return fitReport(question, result, system, advice);
  },
};

/** What to read next. */
export const adviceStudy = {
  says: 'What to read next, how long to wait, and how to go about it.',
  options: { unknowns: `what to tell better: any of ${names}; all where not given` },
  ask: (design: Design, { unknowns }: Options, _system: UnitSystem): BenchAdviceQuestion | string => {
    if (unknowns === undefined) return { design };
    const chosen = readUnknowns(unknowns, allUnknowns.length);
    return typeof chosen === 'string' ? chosen : { design, unknowns: chosen };
  },
  report: adviceReport,
};

function readUnknowns(text: string, most: number = mostUnknowns): Unknown[] | string {
  const words = text.split(/[\s,;+]+/).filter((word) => word !== '');
  const strange = words.find((word) => !allUnknowns.some((unknown) => unknown === word));
  if (strange !== undefined) return `unknowns=: ${strange} is none. There are ${names}.`;
  const chosen = allUnknowns.filter((unknown) => words.includes(unknown));
  if (chosen.length === 0) return `unknowns=: name one at least. There are ${names}.`;
  return chosen.length > most ? `unknowns=: ${most} at most.` : chosen;
}
