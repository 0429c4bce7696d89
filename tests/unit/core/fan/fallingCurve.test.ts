import { describe, expect, test } from 'vitest';
import {
  crossingAt,
  type FallingPiece,
  fallingCurve,
  fallingLoss,
  pressureOnPiece,
} from '../../../../src/core/fan/fallingCurve.ts';
import { evaluatePchip, preparePchip } from '../../../../src/core/solve/pchip.ts';

const beyond = { left: -5, right: -2, window_Pa: 100 };
const out = new Float64Array(2);

describe('fallingCurve of a curve that only falls', () => {
  const curve = preparePchip([0, 2, 5, 9], [40, 33, 20, 0]);
  const falling = fallingCurve(curve, beyond);

  test.each([39.9, 33, 27.5, 20, 6, 0.01])('finds the flow at %d Pa', (dp_Pa) => {
    const { least, most, above, below } = crossingAt(falling, dp_Pa);
    evaluatePchip(curve, least, out);
    expect(out[0]).toBeCloseTo(dp_Pa, 10);
    expect(most).toBe(least);
    expect(above / (out[1] as number)).toBeCloseTo(1, 9);
    expect(below).toBe(above);
  });

  test('goes straight on at both ends, within its window and beyond', () => {
    expect(crossingAt(falling, 50).least).toBeCloseTo(-2, 12);
    expect(crossingAt(falling, 140).least).toBeCloseTo(-20, 12);
    expect(crossingAt(falling, -10).most).toBeCloseTo(14, 12);
    expect(crossingAt(falling, -120).most).toBeCloseTo(69, 12);
  });

  test('has a slope on either side of its bend at shut-off', () => {
    expect(crossingAt(falling, 40)).toEqual({ least: 0, most: 0, above: -5, below: curve.slope[0] });
  });
});

describe('fallingCurve of a curve with dips', () => {
  const curve = preparePchip([0, 4, 8, 9, 12, 16, 20], [50, 36, 18, 30, 29, 17, 0]);
  const falling = fallingCurve(curve, beyond);

  test('keeps the far side of a dip', () => {
    const { most } = crossingAt(falling, 25);
    expect(most).toBeGreaterThan(12);
    evaluatePchip(curve, most, out);
    expect(out[0]).toBeCloseTo(25, 10);
  });

  test('is level at the top of the far side, back to where the near side is as high', () => {
    const { least, most, above, below } = crossingAt(falling, 30);
    expect(most).toBe(9);
    expect(least).toBeGreaterThan(4);
    expect(least).toBeLessThan(8);
    evaluatePchip(curve, least, out);
    expect(out[0]).toBeCloseTo(30, 10);
    expect(above / (out[1] as number)).toBeCloseTo(1, 9);
    expect(Math.abs(below)).toBe(0);
  });

  test('keeps the near side above the dip', () => {
    expect(crossingAt(falling, 36).most).toBe(4);
  });

  test('that begins low bridges back to below no flow', () => {
    const low = fallingCurve(preparePchip([0, 1, 4], [30, 34, 0]), beyond);
    expect(crossingAt(low, 34).most).toBe(1);
    expect(crossingAt(low, 34).least).toBeCloseTo(-0.8, 12);
    expect(crossingAt(low, 44).most).toBeCloseTo(-2.8, 12);
  });

  test('never rises from piece to piece', () => {
    falling.forEach(({ x0, x1, y0, y1 }, i) => {
      expect(x1).toBeGreaterThanOrEqual(x0);
      expect(y1).toBeLessThanOrEqual(y0);
      const before: FallingPiece | undefined = falling[i - 1];
      if (before) expect([before.x1, before.y1]).toEqual([x0, y0]);
    });
  });
});

describe('fallingLoss', () => {
  const loss = fallingLoss(2, 100);

  test.each([
    [50, -5],
    [2, -1],
    [0, 0],
    [-8, 2],
  ])('at %d Pa lets %d through', (dp_Pa, flow) => {
    expect(crossingAt(loss, dp_Pa).least).toBeCloseTo(flow, 12);
  });

  test('is a parabola on each side', () => {
    for (const piece of loss)
      for (const share of [0.2, 0.5, 0.9]) {
        const flow = piece.x0 + share * (piece.x1 - piece.x0);
        expect(pressureOnPiece(piece, share)).toBeCloseTo(-2 * flow * Math.abs(flow), 11);
      }
  });
});
