import { describe, expect, test } from 'vitest';
import { contourLines } from '../../../../src/studies/gaps/contour.ts';
import { gridOf } from '../../../helpers/gridOf.ts';

describe('contour lines', () => {
  test('are exact where the quantity is linear', () => {
    const lines = contourLines(
      gridOf((x, y) => x + 2 * y),
      0.3,
    );
    expect(lines).toHaveLength(1);
    for (const { x, y } of lines[0] ?? []) expect(x + 2 * y).toBeCloseTo(0.3, 12);
  });

  test('run from edge to edge in one piece, or close', () => {
    const [open] = contourLines(
      gridOf((x) => x),
      0.05,
    );
    expect([open?.[0]?.y, open?.at(-1)?.y].sort()).toEqual([-1, 1]);
    const lines = contourLines(
      gridOf((x, y) => Math.hypot(x, y)),
      0.55,
    );
    expect(lines).toHaveLength(1);
    expect(lines[0]?.[0]).toEqual(lines[0]?.at(-1));
    for (const { x, y } of lines[0] ?? []) expect(Math.hypot(x, y)).toBeCloseTo(0.55, 2);
  });

  test('stand on a grid that is not even', () => {
    const xs = [0, 0.1, 1, 5];
    const values = [xs, xs].map((row) => row.map((x) => 10 * x));
    expect(contourLines({ xs, ys: [0, 1], values }, 30)).toEqual([
      [
        { x: 3, y: 0 },
        { x: 3, y: 1 },
      ],
    ]);
  });

  test('part a saddle by its middle', () => {
    const saddle = (ring: number) =>
      contourLines(
        {
          xs: [0, 1],
          ys: [0, 1],
          values: [
            [1, -1],
            [-1, ring],
          ],
        },
        0,
      ).map((line) => line.map(({ x, y }) => `${x.toFixed(2)} ${y.toFixed(2)}`));
    // Middle above: the two low corners are cut off. Middle below: the two high ones.
    expect(saddle(3)).toEqual([
      ['0.50 0.00', '1.00 0.25'],
      ['0.25 1.00', '0.00 0.50'],
    ]);
    expect(saddle(0.5)).toEqual([
      ['0.00 0.50', '0.50 0.00'],
      ['1.00 0.67', '0.67 1.00'],
    ]);
  });

  test('leave out cells without a value, and levels that nothing reaches', () => {
    expect(
      contourLines(
        gridOf((x) => (x > 0 ? null : x)),
        -0.35,
      ),
    ).toHaveLength(1);
    expect(
      contourLines(
        gridOf((x) => (x > -0.5 ? null : x)),
        0,
      ),
    ).toEqual([]);
    expect(
      contourLines(
        gridOf((x) => x),
        7,
      ),
    ).toEqual([]);
    expect(contourLines({ xs: [1], ys: [1], values: [[0]] }, 0)).toEqual([]);
  });
});
