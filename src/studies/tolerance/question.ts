import type { Design } from '../../model/design.ts';

/** What if parts vary? So many boxes drawn as they may come out, alone or in batches of `boxes`. */
export interface ToleranceQuestion {
  readonly design: Design;
  /** Boxes to draw. */
  readonly draws: number;
  /** Any whole number below 2³²: the same one draws the same boxes. */
  readonly seed: number;
  /** Built together, of one lot of stuff: also the chance is asked that all of them hold. */
  readonly boxes: number;
  /** Whether methods scatter too, each by its card; otherwise they are taken as exact. */
  readonly methods: boolean;
}

/** Within these a question is taken. 90 bytes a box are kept, twice while they are gathered: the most need 36 MB. */
export const fewestDraws = 100;
export const mostDraws = 200_000;
export const mostBoxes = 1000;
export const mostSeed = 2 ** 32 - 1;

/** Whole batches only, the last one filled up. */
export function drawsOf({ draws, boxes }: ToleranceQuestion): number {
  const asked = Math.min(mostDraws, Math.max(fewestDraws, Math.floor(draws)));
  const each = boxesOf(boxes);
  return Math.ceil(asked / each) * each;
}

export function boxesOf(boxes: number): number {
  return Math.min(mostBoxes, Math.max(1, Math.floor(boxes)));
}
