import { createContext, useContext } from 'react';
import { useStore } from 'zustand';
import {
  createOwnShelf,
  type OwnShelf,
  type OwnShelfActions,
  type OwnShelfState,
} from '../../store/ownShelf.ts';

/** The reader's own entries; a page has one shelf. */
export const ShelfContext = createContext<OwnShelf>(createOwnShelf());

/** Renders again only when what `select` returns is another value. */
export function useOwnShelf<T>(select: (state: OwnShelfState) => T): T {
  return useStore(useContext(ShelfContext), select);
}

export function useShelfActions(): OwnShelfActions {
  return useContext(ShelfContext).getState();
}
