import { describe, expect, test } from 'vitest';
import { shareInterval } from '../../../../src/core/solve/shareInterval.ts';
import { shareOf, togetherOf } from '../../../../src/studies/tolerance/estimate.ts';

/** So many boxes of each batch hold. */
const batches = (hold: readonly number[], boxes: number) =>
  Uint8Array.from(hold.flatMap((held) => Array.from({ length: boxes }, (_, i) => Number(i < held))));

describe('the share that holds', () => {
  test('of single boxes has the interval of independent draws', () => {
    const yes = batches([90, 100, 100, 100], 100);
    const [low, high] = shareInterval(390, 400, 0.95);
    expect(shareOf(yes, 1)).toEqual({ share: 0.975, low, high });
  });

  test('of boxes that come out alike is no surer than that of as many batches', () => {
    const yes = batches([10, 0, 10, 10, 10, 0, 10, 10], 10);
    const [low, high] = shareInterval(6, 8, 0.95);
    const found = shareOf(yes, 10);
    expect(found.share).toBe(0.75);
    expect(found.low).toBeCloseTo(low, 12);
    expect(found.high).toBeCloseTo(high, 12);
  });

  test('of boxes that differ within every batch is as sure as that of single ones', () => {
    const yes = batches([9, 9, 9, 9, 9, 9], 10);
    expect(shareOf(yes, 10)).toEqual(shareOf(yes, 1));
  });

  test('of none, or of all, rests on as many batches as there are', () => {
    expect(shareOf(batches([10, 10, 10], 10), 10)).toMatchObject({
      share: 1,
      low: shareInterval(3, 3, 0.95)[0],
    });
    expect(shareOf(new Uint8Array(0), 1)).toEqual({ share: 0, low: 0, high: 1 });
  });
});

describe('the chance that all of a batch hold', () => {
  test('is the share of whole batches', () => {
    const [low, high] = shareInterval(2, 4, 0.95);
    expect(togetherOf(batches([3, 2, 3, 0], 3), 3)).toEqual({ boxes: 3, batches: 4, share: 0.5, low, high });
  });

  test('waits for a whole batch, and is no question for a single box', () => {
    expect(togetherOf(batches([2], 2), 3)).toBeNull();
    expect(togetherOf(batches([1, 1], 1), 1)).toBeNull();
    expect(togetherOf(Uint8Array.of(1, 1, 1, 0, 1), 3)).toMatchObject({ batches: 1, share: 1 });
  });
});
