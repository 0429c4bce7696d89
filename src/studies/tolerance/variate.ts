import { triangularQuantile, uniformQuantile } from '../../core/solve/distributions.ts';
import { normalQuantile } from '../../core/solve/normal.ts';
import type { SpreadKind } from '../../model/spreads/usualSpread.ts';

/**
 * A deviation in units of a spread's size, at this share of all draws (above 0, below 1): of one standard deviation for
 * normal and skewed spreads, of half the width for the others.
 */
export function variate(kind: SpreadKind, share: number): number {
  switch (kind) {
    case 'none':
      return 0;
    case 'normal':
    case 'lognormal':
      return normalQuantile(share);
    case 'uniform':
    case 'tolerance':
      return uniformQuantile(share, -1, 1);
    case 'triangular':
      return triangularQuantile(share, -1, 0, 1);
  }
}

/** How far a value may deviate, and in which way. */
export interface Deviation {
  readonly kind: SpreadKind;
  /** In the value's unit, or a share of it where `relative`; of the logarithm where skewed. */
  readonly size: number;
  readonly relative: boolean;
}

/** @param times deviation in units of the size, from `variate` */
export function deviated(nominal: number, { kind, size, relative }: Deviation, times: number): number {
  if (kind === 'lognormal') return nominal * Math.exp(size * times);
  return relative ? nominal * (1 + size * times) : nominal + size * times;
}
