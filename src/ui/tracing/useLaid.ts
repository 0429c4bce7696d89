import { useContext, useEffect, useState } from 'react';
import { emptyTracing } from '../../model/tracing/tracing.ts';
import { type Laid, layOut, type PictureKeeping } from '../../store/tracing/desk.ts';
import { unitTyped } from '../../store/unitTyped.ts';
import { useDesignStore } from '../bench/DesignContext.ts';
import { KeeperContext } from '../bench/KeeperContext.ts';

export interface LaidOut {
  /** `null` until what was kept is here. */
  readonly laid: Laid | null;
  readonly keeping: PictureKeeping;
}

/** The picture of a list of points as it was left; what is done to it is kept for as long as this is shown. */
export function useLaid(list: string): LaidOut {
  const design = useDesignStore();
  const kept = useContext(KeeperContext);
  const [laid, setLaid] = useState<Laid | null>(null);
  const [keeping, setKeeping] = useState<PictureKeeping>('nothing');
  useEffect(() => {
    let isOver = false;
    let mine: Laid | null = null;
    const open = async () => {
      const keeper = (await kept?.keeper) ?? null;
      const { identity, system, units } = design.getState();
      const unitOf = (key: string) => unitTyped(units, `${list}[0].${key}`);
      const [flow, pressure] = [unitOf('flow_m3PerS'), unitOf('dp_Pa')];
      const here = await layOut({
        pictures: keeper?.pictures ?? null,
        design: identity?.id ?? null,
        claim: async () => (await keeper?.claim()) ?? null,
        list,
        system,
        blank: emptyTracing(system, { ...(flow && { flow }), ...(pressure && { pressure }) }),
        hear: setKeeping,
      });
      if (isOver) return here.close();
      mine = here;
      setLaid(here);
    };
    void open();
    return () => {
      isOver = true;
      void mine?.close();
    };
  }, [design, kept, list]);
  return { laid, keeping };
}
