import { hash32 } from '../../core/solve/hash32.ts';
import { quasiRandom } from '../../core/solve/quasiRandom.ts';
import { shuffled } from './shuffled.ts';

/** Points of the unit cube, by the number of the box: what of it is drawn once for a batch comes first. */
export interface Sequence {
  /** Writes the shares of one box into the front of `out`. */
  readonly read: (index: number, out: Float64Array) => void;
}

/**
 * Boxes one by one: one quasi-random sequence over everything. Boxes in batches: what a batch has in common comes from a
 * sequence of its own, by the number of the batch, and what differs from box to box from another, whose points are shuffled
 * among all boxes – Latin supercube sampling, Owen 1998, ACM Trans. Model. Comput. Simul. 8, 71 (from memory) – so that the
 * boxes of one batch are as good as independent.
 */
export function boxSequence(
  shared: number,
  own: number,
  { seed, boxes, draws }: { readonly seed: number; readonly boxes: number; readonly draws: number },
): Sequence {
  if (boxes === 1) {
    const all = quasiRandom(shared + own, seed);
    return { read: (index, out) => all.fill(index, 1, out) };
  }
  const ofBatch = quasiRandom(shared, hash32(seed, 1));
  const ofBox = quasiRandom(own, hash32(seed, 2));
  const tail = new Float64Array(own);
  return {
    read: (index, out) => {
      ofBatch.fill(Math.floor(index / boxes), 1, out);
      ofBox.fill(shuffled(index, draws, seed), 1, tail);
      out.set(tail, shared);
    },
  };
}
