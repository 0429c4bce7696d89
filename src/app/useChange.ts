import { useEffect, useState } from 'react';
import type { ChangeReport } from '../report/types.ts';
import { lastMove } from '../store/history.ts';
import { useDesign } from '../ui/bench/DesignContext.ts';
import type { Answer } from './useAnswer.ts';

const lazily = () => import('../report/changeReport.ts');
type Words = Awaited<ReturnType<typeof lazily>>;

/** What the last edit did; `null` where there was none since this design came to the bench. */
export function useChange({ design, outcome, prefs: { system } }: Answer): ChangeReport | null {
  const last = useDesign(({ history }) => lastMove(history));
  const undone = useDesign(({ history }) => history.undone);
  // Nobody edits before the first paint, so its words may come after.
  const [words, setWords] = useState<Words | null>(null);
  useEffect(() => void lazily().then(setWords), []);
  if (last === null || words === null) return null;
  const { name, path, moment } = last;
  const since = { name, path, undone, design: moment.solvedDesign, outcome: moment.outcome };
  return words.changeReport(design, outcome, since, system);
}
