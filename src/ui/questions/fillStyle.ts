import type { CSSProperties } from 'react';

/** A bar runs to 125 % of a limit; beyond that it is full and the number beside it speaks. */
const widest = 1.25;

export function fillStyle(used: number | null): CSSProperties {
  const share = used === null ? 0 : Math.min(used, widest) / widest;
  return { inlineSize: `${(share * 100).toFixed(1)}%` };
}

/** A part of a whole, for a stacked bar. Air that runs backwards has no width. */
export function partStyle(share: number): CSSProperties {
  return { flexGrow: Math.max(0, share), flexBasis: 0 };
}

/** A part of the largest, for bars in a list. */
export function barStyle(share: number, largest: number): CSSProperties {
  return { inlineSize: `${((Math.max(0, share) / Math.max(largest, 1e-9)) * 100).toFixed(1)}%` };
}
