import type { Design } from '../model/design.ts';
import type { UnitSystem } from '../model/say.ts';
import { changesReport } from '../report/changes/changesReport.ts';
import { compareReport } from '../report/compare/compareReport.ts';
import type { StudyReport } from '../report/studyReport.ts';
import type { ChangesQuestion, ChangesResult } from '../studies/changes/changes.ts';
import { mostCompared } from '../studies/compare/compare.ts';
import type { StudyKind } from './studyKind.ts';

/** What to change first. */
export const changesStudy = {
  says: 'What to change first: everything that could be done, by kelvin gained.',
  options: {},
  ask: (design: Design): ChangesQuestion => ({ design }),
  report: ({ design }: ChangesQuestion, result: ChangesResult | null, system: UnitSystem): StudyReport =>
    result === null
      ? { sentence: 'Nothing was computed.', remarks: [], tables: [] }
      : changesReport(design, result, system),
};

const mostOthers = mostCompared - 1;

/** Designs side by side, the first file on the left. */
export const compareStudy: StudyKind = {
  says: 'Designs side by side: what differs in the inputs, and what follows.',
  options: { with: `further design files, separated by commas, ${mostOthers} at most` },
  run: async (pool, design, options, system, open) => {
    const files = (options.with ?? '').split(',').filter((file) => file !== '');
    if (files.length === 0) return 'Compare with what? Name design files after with=.';
    if (files.length > mostOthers) return `At most ${mostOthers} designs beside the first.`;
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
