import type { CSSProperties } from 'react';

/** Hands the share of the way from room to limit to the style sheet, which tints by it. */
export function warmthStyle(warmth: number | null): CSSProperties {
  return (warmth === null ? {} : { '--warmth': warmth.toFixed(3) }) as CSSProperties;
}
