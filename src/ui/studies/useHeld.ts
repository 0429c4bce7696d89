import { useState } from 'react';
import type { JobName, QuestionOf, ResultOf } from '../../workers/studies/jobs.ts';
import type { StudyView } from './useStudy.ts';

interface Held<N extends JobName> {
  readonly result: ResultOf<N>;
  readonly question: QuestionOf<N>;
}

/** The last whole answer of a study. Estimates on the way to the next are passed over, so that nothing jumps. */
export function useHeld<N extends JobName>({ result, question, fresh }: StudyView<N>): Held<N> | null {
  const [held, setHeld] = useState<Held<N> | null>(null);
  if (fresh && result !== null && question !== null && held?.result !== result) setHeld({ result, question });
  return held;
}
