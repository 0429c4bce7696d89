import { useStore } from 'zustand';
import { toleranceLine } from '../../../report/tolerance/toleranceSentence.ts';
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
  return result && asked === null && isOfThisBox ? toleranceLine(result, answers?.design === design) : null;
}
