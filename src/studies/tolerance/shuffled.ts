import { hash32, mix32 } from '../../core/solve/hash32.ts';

const rounds = 4;

/**
 * Where an index goes when all of `count` are shuffled: each of them to a place of its own, without a list. A network after
 * Feistel over the next even power of two, walked on until it lands inside.
 * @param index from 0 to `count` − 1
 */
export function shuffled(index: number, count: number, seed: number): number {
  let bits = 1;
  while (4 ** bits < count) bits++;
  const mask = 2 ** bits - 1;
  let at = index;
  do {
    let left = Math.floor(at / 2 ** bits);
    let right = at & mask;
    for (let round = 0; round < rounds; round++) {
      const next = (left ^ mix32(hash32(seed, round) + right)) & mask;
      left = right;
      right = next;
    }
    at = left * 2 ** bits + right;
  } while (at >= count);
  return at;
}
