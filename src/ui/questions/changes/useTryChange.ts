import { use } from 'react';
import type { ChangeRow } from '../../../report/changes/changeRow.ts';
import { useActions } from '../../bench/DesignContext.ts';
import { KeeperContext } from '../../bench/KeeperContext.ts';

type Made = Pick<ChangeRow, 'values' | 'edit' | 'variant'>;

interface Ways {
  /** Onto the bench, as one edit. */
  readonly tryIt: (change: Made) => void;
  /** The design stays as it is; a variant of it with the change goes on. `null` where nothing is kept. */
  readonly asVariant: ((change: Made) => Promise<void>) | null;
}

/** The two ways to take a change that was ranked. */
export function useTryChange(): Ways {
  const { setMany, setValue } = useActions();
  const coming = use(KeeperContext)?.keeper;
  const tryIt = ({ values, edit }: Made) => {
    const [only, ...others] = Object.entries(values);
    // One field is told with both its values, as if it had been typed.
    if (only !== undefined && others.length === 0) setValue(...only);
    else setMany(values, edit);
  };
  const asVariant = async (change: Made) => {
    await (await coming)?.makeVariant(change.variant);
    tryIt(change);
  };
  return { tryIt, asVariant: coming === undefined ? null : asVariant };
}
