import type { PartId } from '../../report/drawing.ts';

/** Parts that have no measures to mistake for one another: words do. */
const plain = ['load', 'room', 'filter', 'extras', 'limits', 'cutting'] as const;

export type DrawnPart = Exclude<PartId, (typeof plain)[number]>;

/** Whether the panel of a part shows a figure of its measures. */
export function isDrawn(part: PartId): part is DrawnPart {
  return !plain.some((each) => each === part);
}
