import { describe, expect, test } from 'vitest';
import { bandPolygons } from '../../../../src/studies/gaps/bands.ts';
import type { Point } from '../../../../src/studies/gaps/contour.ts';
import { gridOf } from '../../../helpers/gridOf.ts';

const area = (points: readonly Point[]) =>
  Math.abs(
    points.reduce((sum, { x, y }, i) => {
      const next = points[(i + 1) % points.length] as Point;
      return sum + x * next.y - next.x * y;
    }, 0),
  ) / 2;

describe('the bands between contour lines', () => {
  test('cover the whole grid together, and no more', () => {
    const grid = gridOf((x, y) => x * x - y);
    const levels = [-2, -0.6, 0.1, 0.8, 3];
    const whole = levels
      .slice(1)
      .flatMap((high, i) => bandPolygons(grid, levels[i] as number, high))
      .reduce((sum, polygon) => sum + area(polygon), 0);
    expect(whole).toBeCloseTo(4, 9);
  });

  test('have the area that is between their levels', () => {
    const strip = bandPolygons(
      gridOf((x, y) => x + y),
      -0.25,
      0.5,
    );
    // Below x + y = 0.5 less below x + y = −0.25, in the square of side 2.
    const below = (level: number) => (level < 0 ? (2 + level) ** 2 / 2 : 4 - (2 - level) ** 2 / 2);
    expect(strip.reduce((sum, polygon) => sum + area(polygon), 0)).toBeCloseTo(below(0.5) - below(-0.25), 9);
  });

  test('are bounded by lines of the same level', () => {
    const grid = gridOf((x, y) => x * y);
    for (const polygon of bandPolygons(grid, Number.NEGATIVE_INFINITY, 0.2))
      for (const { x, y } of polygon) expect(x * y).toBeLessThan(0.2 + 0.006);
  });
});
