import { useCallback, useContext } from 'react';
import { nextVariant } from '../../../model/fullTitle.ts';
import type { Entered } from '../../../store/state.ts';
import type { Values } from '../../../studies/vary.ts';
import { useActions, useDesignStore } from '../../bench/DesignContext.ts';
import { KeeperContext } from '../../bench/KeeperContext.ts';

/** Where a result goes: into the design on the bench, or into a variant of it that takes its place there. */
export type Whereto = 'design' | 'variant';

export type Edit = Values | ((entered: Entered) => Partial<Entered>);

/** Puts a result into the design, as one step to undo. */
export function useTake(whereto: Whereto): (edit: Edit, name: string) => void {
  const store = useDesignStore();
  const { setMany, apply } = useActions();
  const coming = useContext(KeeperContext)?.keeper;
  return useCallback(
    async (edit, name) => {
      if (whereto === 'variant') {
        const keeper = await coming;
        const family = store.getState().identity?.family;
        const kept = (await keeper?.list().catch(() => [])) ?? [];
        const taken = kept.filter((record) => record.family === family);
        const names = [store.getState().design, ...taken.map(({ content }) => content.design)];
        await keeper?.makeVariant(nextVariant(names.map(({ variant }) => variant)));
      }
      if (typeof edit === 'function') apply(edit, name);
      else setMany(edit as Readonly<Record<string, number>>, name);
    },
    [store, setMany, apply, coming, whereto],
  );
}
