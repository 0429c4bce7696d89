import { hash32, mix32 } from './hash32.ts';
import { sobolDirections, wordBits } from './sobolDirections.ts';

export interface QuasiRandom {
  /** Points `from … from + count − 1` (below 2³²), one after the other, into the front of `out`. */
  readonly fill: (from: number, count: number, out: Float64Array) => void;
}

/**
 * Points that spread evenly over (0, 1)^dimensions: Sobol’s sequence with the direction numbers of Joe & Kuo 2008, in
 * the Gray-code order of Antonov & Saleev 1979, scrambled at random by the seed: a linear scramble of the binary places
 * (Matoušek 1998, J. Complexity 14, 527) and a digital shift. Every point alone is then uniform, every mean unbiased,
 * its variance as under the nested scramble of Owen 1997, and every net of the sequence stays one. Any range costs the
 * same wherever it begins; the seed repeats it to the last bit. A coordinate is an odd multiple of 2⁻³³, never 0 or 1.
 * Whole powers of two, from a multiple of themselves on, are balanced best. Dimensions beyond the table (161) are
 * pseudo-random by their index: give the inputs that matter most first.
 * @param seed any 32-bit integer
 */
export function quasiRandom(dimensions: number, seed: number): QuasiRandom {
  const plain = sobolDirections(dimensions);
  const nets = plain.length;
  const directions = new Uint32Array(wordBits * nets);
  plain.forEach((column, d) => {
    scrambled(column, seed, d).forEach((v, bit) => {
      directions[bit * nets + d] = v;
    });
  });
  const shift = Uint32Array.from(plain, (_, d) => hash32(seed, d, wordBits));
  const keys = Array.from({ length: Math.max(0, dimensions - nets) }, (_, i) => keysOf(seed, nets + i));

  return {
    fill: (from, count, out) => {
      const words = shift.slice();
      const gray = (from ^ (from >>> 1)) >>> 0;
      for (let bit = 0; bit < wordBits; bit++) if ((gray >>> bit) & 1) flip(words, directions, bit);
      let place = 0;
      for (let i = 0; i < count; i++) {
        const index = (from + i) >>> 0;
        for (let d = 0; d < nets; d++) out[place++] = share(words[d] as number);
        for (const [before, after] of keys) out[place++] = share(mix32(mix32(index + before) ^ after));
        flip(words, directions, lowestBit(index + 1));
      }
    },
  };
}

/** Two keys, before and after a first mixing, so that no dimension is another one moved along. */
function keysOf(seed: number, dimension: number): readonly [number, number] {
  return [hash32(seed, dimension, 0), hash32(seed, dimension, 1)];
}

/** The middle of the interval that a 32-bit word stands for. */
function share(word: number): number {
  return (word + 0.5) / 2 ** wordBits;
}

/** Which binary place of a number is its lowest 1; of 2³², which has none in 32 bits, the last. */
function lowestBit(value: number): number {
  return (wordBits - 1 - Math.clz32(value & -value)) & (wordBits - 1);
}

function flip(words: Uint32Array, directions: Uint32Array, bit: number): void {
  const start = bit * words.length;
  for (let d = 0; d < words.length; d++) words[d] = (words[d] as number) ^ (directions[start + d] as number);
}

/** Every binary place of every direction number plus (modulo 2) a random choice of the places above it. */
function scrambled(column: Uint32Array, seed: number, dimension: number): Uint32Array {
  const out = new Uint32Array(wordBits);
  for (let row = 0; row < wordBits; row++) {
    const own = 1 << (wordBits - 1 - row);
    const above = -2 << (wordBits - 1 - row);
    const chosen = (hash32(seed, dimension, row) & above) | own;
    for (let bit = 0; bit < wordBits; bit++) {
      if (isOdd((column[bit] as number) & chosen)) out[bit] = (out[bit] as number) | own;
    }
  }
  return out;
}

/** Whether a word has an odd number of ones. */
function isOdd(word: number): boolean {
  let folded = word ^ (word >>> 16);
  folded ^= folded >>> 8;
  folded ^= folded >>> 4;
  return ((0x6996 >>> (folded & 15)) & 1) === 1;
}
