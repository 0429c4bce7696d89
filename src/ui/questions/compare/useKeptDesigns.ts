import { use, useEffect, useState } from 'react';
import type { Keeper } from '../../../store/keeping/keeper.ts';
import type { KeptDesign, Unread } from '../../../store/keeping/record.ts';
import { KeeperContext } from '../../bench/KeeperContext.ts';

export interface KeptDesigns {
  /** The one written last first; those on the bench too. */
  readonly records: readonly KeptDesign[];
  /** What is kept and cannot be read. */
  readonly unread: readonly Unread[];
  /** The browser keeps nothing here. */
  readonly failed: boolean;
  readonly keeper: Keeper | null;
}

const none: KeptDesigns = { records: [], unread: [], failed: false, keeper: null };

/** All designs of this browser, read again whenever one of them was written, here or in another tab. */
export function useKeptDesigns(): KeptDesigns {
  const coming = use(KeeperContext)?.keeper;
  const [kept, setKept] = useState(none);
  useEffect(() => {
    let isGone = false;
    let stop = () => {};
    const read = async (keeper: Keeper) => {
      const found = await listOf(keeper);
      if (!isGone) setKept({ ...found, keeper });
    };
    void coming?.then((keeper) => {
      if (isGone) return;
      stop = keeper.watch(() => void read(keeper));
      void read(keeper);
    });
    return () => {
      isGone = true;
      stop();
    };
  }, [coming]);
  return kept;
}

async function listOf(keeper: Keeper): Promise<Omit<KeptDesigns, 'keeper'>> {
  try {
    return { records: await keeper.list(), unread: await keeper.unread(), failed: false };
  } catch {
    return { records: [], unread: [], failed: true };
  }
}
