import { createContext, useContext } from 'react';
import { useStore } from 'zustand';
import type { DesignStore } from '../../store/designStore.ts';
import { type FieldView, fieldView } from '../../store/fieldView.ts';
import type { DesignActions, DesignState } from '../../store/state.ts';

/** The design on the bench; one page has one. */
export const DesignContext = createContext<DesignStore | null>(null);

export function useDesignStore(): DesignStore {
  const store = useContext(DesignContext);
  if (store === null) throw new Error('no design store around this component');
  return store;
}

/** Renders again only when what `select` returns is another value. */
export function useDesign<T>(select: (state: DesignState) => T): T {
  return useStore(useDesignStore(), select);
}

/** Actions never change, so nobody renders again for them. */
export function useActions(): DesignActions {
  return useDesignStore().getState();
}

export function useField(path: string): FieldView {
  return useDesign((state) => fieldView(state, path));
}
