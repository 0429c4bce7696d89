import { useMemo } from 'react';
import type { WorkingReport } from '../../report/working/types.ts';
import { useDesign } from '../bench/DesignContext.ts';
import type { QuestionId } from '../questions/questionTitles.ts';
import { useStudy } from '../studies/useStudy.ts';

/** The working of the answer on the bench, made by a worker when somebody looks at it. @param at where it is looked at */
export function useWorking(at?: QuestionId): {
  readonly report: WorkingReport | null;
  readonly fresh: boolean;
} {
  const design = useDesign(({ solvedDesign }) => solvedDesign);
  const system = useDesign((state) => state.system);
  const question = useMemo(() => ({ design, prefs: { system } }), [design, system]);
  const { result, fresh } = useStudy('working', question, { live: true, rank: 0, ...(at ? { at } : {}) });
  return { report: result, fresh };
}
