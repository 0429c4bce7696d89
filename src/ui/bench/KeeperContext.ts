import { createContext } from 'react';
import type { Keeper } from '../../store/keeping/keeper.ts';

/** Keeps the designs of this browser; comes after the first paint, and not at all where nothing is kept. */
export const KeeperContext = createContext<Promise<Keeper> | null>(null);
