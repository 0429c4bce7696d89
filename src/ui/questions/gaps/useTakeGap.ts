import { getAt } from '../../../model/path.ts';
import type { GapValues } from '../../../studies/gaps/gap.ts';
import { useActions, useDesignStore } from '../../bench/DesignContext.ts';

/** Puts values into the design, as one step to undo. */
export function useTakeGap(): (values: GapValues, name: string) => void {
  const store = useDesignStore();
  const { setValue, setMany } = useActions();
  return (values, name) => {
    const { design } = store.getState();
    const changed = Object.entries(values).filter(([path, value]) => getAt(design, path) !== value);
    const [only] = changed;
    if (only === undefined) return;
    if (changed.length === 1) setValue(only[0], only[1]);
    else setMany(Object.fromEntries(changed), name);
  };
}
