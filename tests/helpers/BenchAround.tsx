import { type ReactNode, useState } from 'react';
import { createDesignStore, type DesignStore } from '../../src/store/designStore.ts';
import type { Keeper } from '../../src/store/keeping/keeper.ts';
import { createStudies } from '../../src/store/studies.ts';
import { DesignContext } from '../../src/ui/bench/DesignContext.ts';
import { KeeperContext } from '../../src/ui/bench/KeeperContext.ts';
import { StudiesContext } from '../../src/ui/studies/StudiesContext.ts';
import type { Pool } from '../../src/workers/studies/pool.ts';
import { silentPool } from './pools.ts';

interface Props {
  readonly children: ReactNode;
  readonly store?: DesignStore;
  readonly pool?: Pool;
  readonly keeper?: Keeper;
  readonly open?: (id: string, name: string) => void;
}

/** What stands around every view of the page: a design, studies, and, where given, the designs that are kept. */
export function BenchAround({ children, store, pool = silentPool, keeper, open = () => {} }: Props) {
  const [own] = useState(() => store ?? createDesignStore());
  const [studies] = useState(() => createStudies(pool));
  const [kept] = useState(() => (keeper ? { keeper: Promise.resolve(keeper), open } : null));
  return (
    <DesignContext value={own}>
      <StudiesContext value={studies}>
        <KeeperContext value={kept}>{children}</KeeperContext>
      </StudiesContext>
    </DesignContext>
  );
}
