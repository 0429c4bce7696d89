import type { CSSProperties } from 'react';

/** Hands the depth of a tint, from 0 to 1, to the style sheet. */
export function depthStyle(depth: number): CSSProperties {
  return { '--depth': depth.toFixed(3) } as CSSProperties;
}
