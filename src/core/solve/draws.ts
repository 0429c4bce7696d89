import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { lognormalFromMean } from './normal.ts';

/** A stream of random numbers that a seed repeats to the last bit. */
export interface Draws {
  /** From 0 (included) to 1 (not included). */
  readonly uniform: () => number;
  readonly normal: (mean: number, deviation: number) => number;
  /** By its arithmetic mean and coefficient of variation; never at or below zero for a mean above it. */
  readonly lognormal: (mean: number, variation: number) => number;
}

/** @param seed any 32-bit integer */
export function seededDraws(seed: number): Draws {
  const generator = xoroshiro128plus(seed);
  const uniform = () => uniformFloat64(generator);
  let spare: number | null = null;

  /** Marsaglia's polar method: a point in the unit circle gives two draws, the second is kept for the next call. */
  const standardNormal = (): number => {
    if (spare !== null) {
      const kept = spare;
      spare = null;
      return kept;
    }
    let u: number;
    let v: number;
    let size: number;
    do {
      u = 2 * uniform() - 1;
      v = 2 * uniform() - 1;
      size = u * u + v * v;
    } while (size >= 1 || size === 0);
    const scale = Math.sqrt((-2 * Math.log(size)) / size);
    spare = v * scale;
    return u * scale;
  };

  return {
    uniform,
    normal: (mean, deviation) => mean + deviation * standardNormal(),
    lognormal: (mean, variation) => {
      const { mu, sigma } = lognormalFromMean(mean, variation);
      return Math.exp(mu + sigma * standardNormal());
    },
  };
}
