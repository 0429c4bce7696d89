import { useMemo, useState } from 'react';
import type { KeptDesign } from '../../../store/keeping/record.ts';
import { mostCompared } from '../../../studies/compare/compare.ts';
import { useDesign } from '../../bench/DesignContext.ts';

export interface Chosen {
  /** What may stand beside the design on the bench: variants of its own first. */
  readonly others: readonly KeptDesign[];
  /** Those that do, in that order. */
  readonly chosen: readonly KeptDesign[];
  readonly isFull: boolean;
  readonly toggle: (id: string) => void;
}

/** Which kept designs are compared: the variants of the one on the bench, until the reader chooses. */
export function useCompared(records: readonly KeptDesign[]): Chosen {
  const identity = useDesign((state) => state.identity);
  const [picked, setPicked] = useState<Readonly<Record<string, boolean>>>({});
  const others = useMemo(() => {
    const isKin = ({ family }: KeptDesign) => family === identity?.family;
    const elsewhere = records.filter(({ id }) => id !== identity?.id);
    return [...elsewhere.filter(isKin), ...elsewhere.filter((record) => !isKin(record))];
  }, [records, identity]);
  const chosen = useMemo(() => {
    const isWanted = ({ id, family }: KeptDesign) => picked[id] ?? family === identity?.family;
    return others.filter(isWanted).slice(0, mostCompared - 1);
  }, [others, picked, identity]);
  // From the first press on the others stand as they stand: none comes in for one that was left out.
  const toggle = (id: string) =>
    setPicked(
      Object.fromEntries(others.map((each) => [each.id, chosen.includes(each) !== (each.id === id)])),
    );
  return { others, chosen, isFull: chosen.length >= mostCompared - 1, toggle };
}
