import { createContext } from 'react';
import type { Keeper } from '../../store/keeping/keeper.ts';

/** The designs that this browser keeps, for whatever stands below the bench. */
export interface Kept {
  /** Comes after the first paint. */
  readonly keeper: Promise<Keeper>;
  /** Puts a kept design on the bench; what is there now is kept first, or asked about. */
  readonly open: (id: string, name: string) => void;
}

/** `null` where no designs are kept. */
export const KeeperContext = createContext<Kept | null>(null);
