import { use } from 'react';
import { freeVariant } from '../../../model/fullTitle.ts';
import type { ChangeRow } from '../../../report/changes/changeRow.ts';
import { useDesignStore } from '../../bench/DesignContext.ts';
import { KeeperContext } from '../../bench/KeeperContext.ts';

type Made = Pick<ChangeRow, 'values' | 'edit' | 'variant'>;

interface Ways {
  /** Onto the bench, as one edit. */
  readonly tryIt: (change: Made) => void;
  /** The design stays as it is; a variant of it with the change goes on. `null` where nothing is kept. @returns its name */
  readonly asVariant: ((change: Made) => Promise<string>) | null;
}

/** The two ways to take a change that was ranked. */
export function useTryChange(): Ways {
  const store = useDesignStore();
  const { setMany, setValue } = store.getState();
  const coming = use(KeeperContext)?.keeper;
  const tryIt = ({ values, edit }: Made) => {
    const [only, ...others] = Object.entries(values);
    // One field is told with both its values, as if it had been typed.
    if (only !== undefined && others.length === 0) setValue(...only);
    else setMany(values, edit);
  };
  const asVariant = async (change: Made) => {
    const keeper = await coming;
    const kept = (await keeper?.list().catch(() => [])) ?? [];
    const family = store.getState().identity?.family;
    const kin = kept.filter((record) => record.family === family).map(({ content }) => content.design);
    const taken = [store.getState().design, ...kin].map(({ variant }) => variant);
    const name = freeVariant(change.variant, taken);
    await keeper?.makeVariant(name);
    tryIt(change);
    return name;
  };
  return { tryIt, asVariant: coming === undefined ? null : asVariant };
}
