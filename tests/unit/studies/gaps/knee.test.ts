import { describe, expect, test } from 'vitest';
import { kneeOf, steeperBranch } from '../../../../src/studies/gaps/knee.ts';

const curve = (of: (x: number) => number, count = 101) =>
  Array.from({ length: count }, (_, i) => ({ x: i / (count - 1), y: of(i / (count - 1)) }));

describe('the knee of a curve', () => {
  test('is its corner where it has one', () => {
    expect(kneeOf(curve((x) => Math.min(x, 0.3)))).toMatchObject({ x: 0.3, kind: 'levelsOff' });
    expect(kneeOf(curve((x) => Math.max(0, x - 0.7)))).toMatchObject({ x: 0.7, kind: 'takesOff' });
    expect(kneeOf(curve((x) => -Math.min(x, 0.3)))).toMatchObject({ x: 0.3, kind: 'levelsOff' });
  });

  test('is where the slope is that of the chord', () => {
    // y = 1 − e^(−5x): slope 5 e^(−5x) equals the chord’s 1 − e^(−5) at x = ln(5 / (1 − e^(−5))) / 5.
    const at = Math.log(5 / (1 - Math.exp(-5))) / 5;
    expect(kneeOf(curve((x) => 1 - Math.exp(-5 * x), 1001))?.x).toBeCloseTo(at, 3);
  });

  test('does not depend on the scale of either axis', () => {
    const one = kneeOf(curve((x) => Math.sqrt(x)));
    const other = kneeOf(
      curve((x) => Math.sqrt(x)).map(({ x, y }) => ({ x: 3 + 1e-3 * x, y: 300 - 40 * y })),
    );
    expect(((other?.x ?? 0) - 3) / 1e-3).toBeCloseTo(one?.x ?? 0, 9);
    expect(other?.distance).toBeCloseTo(one?.distance ?? 0, 9);
  });

  test('is none in a straight line, a level one, a slight bend, or two points', () => {
    expect(kneeOf(curve((x) => 3 * x))).toBe(null);
    expect(kneeOf(curve(() => 1))).toBe(null);
    expect(kneeOf(curve((x) => x + 0.2 * x * (1 - x)))).toBe(null);
    expect(kneeOf(curve((x) => x * x, 2))).toBe(null);
    expect(kneeOf([])).toBe(null);
  });
});

test('the steeper side of the lowest point is where a knee is looked for', () => {
  const points = curve((x) => Math.abs(x - 0.25));
  const branch = steeperBranch(points);
  expect(branch.points[0]?.x).toBe(0.25);
  expect(branch.points.at(-1)?.x).toBe(1);
  expect(branch.change).toBe(0.75);
  expect(steeperBranch([])).toEqual({ points: [], change: 0 });
});
