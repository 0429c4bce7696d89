import type { KeyboardEvent } from 'react';
import { nameOf, type Target } from '../../store/tracing/target.ts';

export const crossId = 'trace-cross';

export function handleId(target: Target): string {
  return `trace-${nameOf(target)}`;
}

/** Of the box for the value of a mark. */
export function valueId(axis: string, index: number): string {
  return `trace-value-${axis}-${index}`;
}

/** Which way an arrow key goes, pixels to the right and down; ten with Shift. `null` for any other key. */
export function arrowOf({ key, shiftKey, ctrlKey, metaKey, altKey }: KeyboardEvent): [number, number] | null {
  if (ctrlKey || metaKey || altKey) return null;
  const far = shiftKey ? 10 : 1;
  switch (key) {
    case 'ArrowLeft':
      return [-far, 0];
    case 'ArrowRight':
      return [far, 0];
    case 'ArrowUp':
      return [0, -far];
    case 'ArrowDown':
      return [0, far];
    default:
      return null;
  }
}

/** What to have in hand when this one is gone: the one before it, or the cross. */
export function focusBefore(target: Target): void {
  const before: Target | null =
    target.kind === 'point' && target.index > 0 ? { kind: 'point', index: target.index - 1 } : null;
  document.getElementById(before === null ? crossId : handleId(before))?.focus({ preventScroll: true });
}
