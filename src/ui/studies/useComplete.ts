import { useState } from 'react';
import type { JobName, QuestionOf, ResultOf } from '../../workers/studies/jobs.ts';
import type { StudyView } from './useStudy.ts';

export interface Complete<N extends JobName> {
  readonly question: QuestionOf<N>;
  readonly result: ResultOf<N>;
}

/** The last answer that was computed to its end, with its question: half an answer would advise wrongly. */
export function useComplete<N extends JobName>({
  result,
  question,
  fresh,
}: StudyView<N>): Complete<N> | null {
  const [last, setLast] = useState<Complete<N> | null>(null);
  if (!fresh || result === null || question === null || last?.result === result) return last;
  const complete = { question, result };
  setLast(complete);
  return complete;
}
