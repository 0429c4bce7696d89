import type { PartId } from '../../report/drawing.ts';

/** Item numbers on the drawing, along the way of the air; a part keeps its number though another is not fitted. */
const numbered: readonly PartId[] = [
  'guard',
  'filter',
  'fan',
  'neck',
  'plenum',
  'baffle',
  'sinks',
  'resistors',
  'bonds',
  'secondFace',
  'box',
  'outlet',
];

/** @returns `null` for what cannot be drawn: load, room, limits, extra losses */
export function partNumber(part: PartId): number | null {
  const at = numbered.indexOf(part);
  return at < 0 ? null : at + 1;
}
