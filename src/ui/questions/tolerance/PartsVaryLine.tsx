import { useStore } from 'zustand';
import { toleranceLine } from '../../../report/tolerance/toleranceSentence.ts';
import { isSameBox } from '../../../store/isOfThisBox.ts';
import { studyAt } from '../../../store/studies.ts';
import { useDesign } from '../../bench/DesignContext.ts';
import { useStudies } from '../../studies/StudiesContext.ts';
import { useOfThisBox } from './useOfThisBox.ts';

/** What the last draw of boxes adds to the verdict; nothing before the first, or while one goes on. */
export function PartsVaryLine() {
  const { store } = useStudies();
  const { result, answers, asked } = useStore(store, (states) => studyAt(states, 'tolerance'));
  const design = useDesign((state) => state.solvedDesign);
  const isOfThisBox = useOfThisBox(answers);
  if (result === null || answers === null || asked !== null || !isOfThisBox) return null;
  return toleranceLine(result, isSameBox(answers.design, design));
}
