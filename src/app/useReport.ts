import { useMemo } from 'react';
import { buildReport } from '../report/buildReport.ts';
import type { Report } from '../report/types.ts';
import { useDesign } from '../ui/bench/DesignContext.ts';

const dayFormat = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });

/** All that is said about the last design that went together. */
export function useReport(): Report {
  const design = useDesign(({ solvedDesign }) => solvedDesign);
  const outcome = useDesign((state) => state.outcome);
  const system = useDesign((state) => state.system);
  const date = dayFormat.format(new Date());
  return useMemo(() => buildReport(design, outcome, { system, date }), [design, outcome, system, date]);
}
