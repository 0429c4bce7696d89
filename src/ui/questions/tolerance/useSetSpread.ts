import { useCallback } from 'react';
import { spreadName, withSpread } from '../../../model/spreads/spreads.ts';
import type { Spread } from '../../../model/spreads/usualSpread.ts';
import { useActions } from '../../bench/DesignContext.ts';

export type SetSpread = (spread: Spread, what?: string) => void;

/** Puts a spread into the design, as an edit that can be undone. */
export function useSetSpread(): SetSpread {
  const { apply } = useActions();
  return useCallback(
    (spread, what = 'changed') => {
      apply(
        ({ design }) => ({ design: { ...design, spreads: withSpread(design, spread) } }),
        `Spread of ${spreadName(spread.path)} ${what}`,
      );
    },
    [apply],
  );
}
