import { createContext, useContext } from 'react';
import type { Keeper } from '../../store/keeping/keeper.ts';

/** What keeps designs between visits, once it is there; `null` where nothing does. */
export const KeeperContext = createContext<Promise<Keeper> | null>(null);

export function useKeeper(): Promise<Keeper> | null {
  return useContext(KeeperContext);
}
