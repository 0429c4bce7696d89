import { expect, test } from 'vitest';
import { frontOf } from '../../../../src/studies/sizing/front.ts';

const costs = ([a, b]: readonly [number, number]) => [a, b] as const;

test('what nothing else beats in both costs stays, the first cost rising', () => {
  const points = [
    [3, 1],
    [1, 5],
    [2, 2],
    [2, 3],
    [4, 1],
    [3, 1],
  ] as const;
  const front = frontOf(points, costs);
  expect(front).toEqual([
    [1, 5],
    [2, 2],
    [3, 1],
  ]);
  expect(front[2]).toBe(points[0]);
});

test('of nothing nothing is left', () => {
  expect(frontOf([], costs)).toEqual([]);
});
