import { useMemo } from 'react';
import type { Outcome } from '../core/system/outcome.ts';
import type { Design } from '../model/design.ts';
import { buildHeadline } from '../report/buildHeadline.ts';
import type { Headline, ReportPrefs } from '../report/types.ts';
import { useDesign } from '../ui/bench/DesignContext.ts';

const dayFormat = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });

/** An answered design and how it is to be said: what a report is made from. */
export interface Answer {
  readonly design: Design;
  readonly outcome: Outcome;
  readonly prefs: ReportPrefs;
}

/** The last design that went together, with its answer. */
export function useAnswer(): Answer {
  const design = useDesign(({ solvedDesign }) => solvedDesign);
  const outcome = useDesign((state) => state.outcome);
  const system = useDesign((state) => state.system);
  const stale = useDesign((state) => state.problems.length > 0);
  const date = dayFormat.format(new Date());
  return useMemo(
    () => ({ design, outcome, prefs: { system, date, stale } }),
    [design, outcome, system, date, stale],
  );
}

export function useHeadline({ design, outcome, prefs }: Answer): Headline {
  return useMemo(() => buildHeadline(design, outcome, prefs), [design, outcome, prefs]);
}
