import type { MouseEvent } from 'react';
import type { PartId } from '../../report/drawing.ts';

/** A click anywhere in a drawing chooses the part whose shape it meets, if it meets one. */
export function choosePart({ target }: MouseEvent, onSelect: (part: PartId) => void): void {
  const part = target instanceof Element ? target.getAttribute('data-part') : null;
  if (part !== null) onSelect(part as PartId);
}
