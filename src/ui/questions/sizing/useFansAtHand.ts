import { useContext, useEffect, useMemo, useState } from 'react';
import type { Design } from '../../../model/design.ts';
import type { FanAtHand } from '../../../studies/sizing/fanChoice.ts';
import { fansAtHand } from '../../../studies/sizing/fansAtHand.ts';
import { useDesign } from '../../bench/DesignContext.ts';
import { KeeperContext } from '../../bench/KeeperContext.ts';

/** Every fan that the reader has entered: in the design on the bench, and in all others that this browser keeps. */
export function useFansAtHand(design: Design): readonly FanAtHand[] {
  const coming = useContext(KeeperContext)?.keeper;
  const here = useDesign(({ identity }) => identity?.id ?? null);
  const [others, setOthers] = useState<readonly Design[]>([]);
  useEffect(() => {
    let isGone = false;
    const read = async () => {
      const kept = (await (await coming)?.list()) ?? [];
      const found = kept.filter(({ id }) => id !== here).map(({ content }) => content.solvedDesign);
      if (!isGone) setOthers(found);
    };
    // A browser that keeps nothing leaves the fans of this design.
    read().catch(() => setOthers([]));
    return () => {
      isGone = true;
    };
  }, [coming, here]);
  const { fan, moreFans } = design;
  // The fans alone count: another gap is no reason to try all fans anew by a list that is not the same.
  // biome-ignore lint/correctness/useExhaustiveDependencies: of the design only its fans are read
  return useMemo(() => fansAtHand([design, ...others]), [fan, moreFans, others]);
}
