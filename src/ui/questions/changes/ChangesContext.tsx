import { createContext, type ReactNode, useDeferredValue, useMemo } from 'react';
import { type ChangesReport, changesReport } from '../../../report/changes/changesReport.ts';
import { isSameBox } from '../../../store/isOfThisBox.ts';
import { useDesign } from '../../bench/DesignContext.ts';
import { useComplete } from '../../studies/useComplete.ts';
import { useStudy } from '../../studies/useStudy.ts';

export interface Changes {
  /** Of the last answer computed to its end; `null` before the first. */
  readonly report: ChangesReport | null;
  /** Whether it is about what stands on the bench now, so that its changes may be made. */
  readonly fresh: boolean;
  /** A mistake of ours, in the words of the exception. */
  readonly fault: string | null;
}

export const ChangesContext = createContext<Changes>({ report: null, fresh: false, fault: null });

/** One run for all who show it: the short list beside the limits and the question below. */
export function ChangesProvider({ children }: { readonly children: ReactNode }) {
  const design = useDesign((state) => state.solvedDesign);
  const isWrong = useDesign(({ problems }) => problems.length > 0);
  const system = useDesign((state) => state.system);
  const asked = useMemo(() => ({ design }), [design]);
  const study = useStudy('changes', asked, { live: true });
  // Keys go first: lists are drawn in the pauses between them.
  const shown = useDeferredValue(useComplete(study));
  const report = useMemo(
    () => (shown?.result ? changesReport(shown.question.design, shown.result, system) : null),
    [shown, system],
  );
  const { fresh, fault } = study;
  const isFresh = fresh && shown !== null && isSameBox(shown.question.design, design) && !isWrong;
  const value = useMemo(() => ({ report, fresh: isFresh, fault }), [report, isFresh, fault]);
  return <ChangesContext value={value}>{children}</ChangesContext>;
}
