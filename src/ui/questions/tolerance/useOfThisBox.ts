import { isOfThisBox } from '../../../store/isOfThisBox.ts';
import type { ToleranceQuestion } from '../../../studies/tolerance/question.ts';
import { useDesign } from '../../bench/DesignContext.ts';

/** Whether an answer may still be shown: not once another design has been opened. */
export function useOfThisBox(question: ToleranceQuestion | null): boolean {
  return useDesign((state) => question !== null && isOfThisBox(state, question.design));
}
