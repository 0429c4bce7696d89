import type { PartId } from '../../report/drawing.ts';
import { partOrder } from '../../report/drawingParts.ts';

/**
 * Item number on the drawing; a part keeps its number though another is not fitted.
 * @returns `null` for what cannot be drawn: load, room, limits, extra losses
 */
export function partNumber(part: PartId): number | null {
  const at = partOrder.indexOf(part);
  return at < 0 ? null : at + 1;
}
