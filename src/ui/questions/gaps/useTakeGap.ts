import { useCallback } from 'react';
import { getAt } from '../../../model/path.ts';
import { type GapForm, pinnedForm } from '../../../store/gapForm.ts';
import type { GapValues } from '../../../studies/gaps/gap.ts';
import { useDesignStore } from '../../bench/DesignContext.ts';

export type TakeGap = (values: GapValues, name: string) => void;

/** Puts values into the design, as one step to undo; the rows stay, or the one just chosen might be gone from under the hand. */
export function useTakeGap(setForm: (change: (before: GapForm) => GapForm) => void): TakeGap {
  const store = useDesignStore();
  return useCallback(
    (values, name) => {
      const { design, solvedDesign, system, setValue, setMany } = store.getState();
      setForm((before) => pinnedForm(before, solvedDesign, system));
      const changed = Object.entries(values).filter(([path, value]) => getAt(design, path) !== value);
      const [only] = changed;
      if (only === undefined) return;
      if (changed.length === 1) setValue(only[0], only[1]);
      else setMany(Object.fromEntries(changed), name);
    },
    [store, setForm],
  );
}
