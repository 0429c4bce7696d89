import { useEffect, useMemo, useState } from 'react';
import { useStore } from 'zustand';
import { isSameQuestion, studyAt } from '../../store/studies.ts';
import type { JobName, QuestionOf, ResultOf } from '../../workers/studies/jobs.ts';
import type { QuestionId } from '../questions/questionTitles.ts';
import { useStudies } from './StudiesContext.ts';
import { useIsNear } from './useIsNear.ts';

export interface StudyView<N extends JobName> {
  readonly result: ResultOf<N> | null;
  /** The question that `result` answers; words and pictures of it belong to this one's design. */
  readonly question: QuestionOf<N> | null;
  /** Whether that is the present question, and answered to the end. */
  readonly fresh: boolean;
  readonly running: boolean;
  /** From 0 to 1. */
  readonly progress: number;
  /** A mistake of ours, in the words of the exception. */
  readonly fault: string | null;
  readonly start: () => void;
  readonly cancel: () => void;
}

interface Options {
  /** Computed again a moment after every edit; otherwise only when asked for. */
  readonly live: boolean;
  /** Smaller goes first. */
  readonly rank?: number;
  /** The section of a live study: far off the screen, it can wait. */
  readonly at?: QuestionId;
}

/** So long an edit must rest before what follows from it is computed, where it is looked at and where it is not. */
const rest_ms = 250;
const longRest_ms = 3000;

/** One study for one view. A question that changes stops the run that it outdates. @param question `null`: nothing to ask */
export function useStudy<N extends JobName>(
  name: N,
  question: QuestionOf<N> | null,
  { live, rank = live ? 1 : 2, at }: Options,
): StudyView<N> {
  const { store, start, cancel } = useStudies();
  const state = useStore(store, (states) => studyAt(states, name));
  const isNear = useIsNear(at);
  const [present, setPresent] = useState(question);
  if (!isSameQuestion(name, present, question)) setPresent(question);

  useEffect(() => {
    const { asked, answers, isEstimate } = studyAt(store.getState(), name);
    const isAsked = asked !== null && isSameQuestion(name, asked, present);
    if (asked !== null && !isAsked) cancel(name);
    const isAnswered = isSameQuestion(name, answers, present) && !isEstimate;
    if (!live || present === null || isAsked || isAnswered) return;
    const timer = setTimeout(
      () => start(name, present, { rank, aside: true }),
      isNear ? rest_ms : longRest_ms,
    );
    return () => clearTimeout(timer);
  }, [store, start, cancel, name, live, rank, present, isNear]);

  const actions = useMemo(
    () => ({ start: () => present && start(name, present, { rank }), cancel: () => cancel(name) }),
    [start, cancel, name, rank, present],
  );
  return {
    result: state.result,
    question: state.answers,
    fresh: state.answers !== null && !state.isEstimate && isSameQuestion(name, state.answers, present),
    running: state.asked !== null,
    progress: state.progress,
    fault: state.fault,
    ...actions,
  };
}
