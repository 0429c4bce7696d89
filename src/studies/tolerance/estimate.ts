import { shareInterval } from '../../core/solve/shareInterval.ts';
import type { ShareEstimate, Together } from './result.ts';

const confidence = 0.95;

/** @param yes one byte a box, 1 where it counts */
export function shareOf(yes: Uint8Array, boxes: number): ShareEstimate {
  const n = yes.length;
  const hits = yes.reduce((sum, each) => sum + each, 0);
  const share = n > 0 ? hits / n : 0;
  const alike = boxes > 1 ? designEffect(yes, boxes, share) : 1;
  const [low, high] = shareInterval(hits / alike, n / alike, confidence);
  return { share, low, high };
}

/**
 * Boxes of one batch come out alike, so that they tell less than as many single ones: by how much, from how far the
 * shares of batches scatter (the design effect of surveys by clusters; Kish 1965, from memory). Between 1 and all of the
 * batch; all of it where no batch differs from another.
 */
function designEffect(yes: Uint8Array, boxes: number, share: number): number {
  const batches = Math.floor(yes.length / boxes);
  let squares = 0;
  for (let batch = 0; batch < batches; batch++) squares += (hitsIn(yes, batch, boxes) / boxes - share) ** 2;
  const independent = (share * (1 - share)) / boxes;
  if (batches < 2 || !(independent > 0)) return boxes;
  return Math.min(boxes, Math.max(1, squares / (batches - 1) / independent));
}

/** Chance that all boxes of a batch hold, from whole batches. `null` for boxes built one by one, or before the first batch. */
export function togetherOf(holds: Uint8Array, boxes: number): Together | null {
  const batches = Math.floor(holds.length / boxes);
  if (boxes < 2 || batches === 0) return null;
  let all = 0;
  for (let batch = 0; batch < batches; batch++) if (hitsIn(holds, batch, boxes) === boxes) all++;
  const [low, high] = shareInterval(all, batches, confidence);
  return { boxes, batches, share: all / batches, low, high };
}

function hitsIn(yes: Uint8Array, batch: number, boxes: number): number {
  let hits = 0;
  for (let i = batch * boxes; i < (batch + 1) * boxes; i++) hits += yes[i] as number;
  return hits;
}
