import { describe, expect, test } from 'vitest';
import { type FanPoint, fanCurveProblem, prepareFanCurve } from '../../../../src/core/fan/fanCurve.ts';

const points = (...pairs: [flow: number, dp: number][]): FanPoint[] =>
  pairs.map(([flow_m3PerS, dp_Pa]) => ({ flow_m3PerS, dp_Pa }));

describe('prepareFanCurve', () => {
  test('knows shut-off, free flow and that a curve only falls', () => {
    const fan = prepareFanCurve(points([0, 40], [0.002, 25], [0.004, 0]));
    expect(fan).toMatchObject({
      shutOff_Pa: 40,
      freeFlow_m3PerS: 0.004,
      isNonIncreasing: true,
      stallBelow_m3PerS: null,
    });
  });

  test('counts a level stretch as not rising', () => {
    expect(prepareFanCurve(points([0, 40], [0.002, 40], [0.004, 0])).isNonIncreasing).toBe(true);
  });

  test('finds the end of the last stretch that rises', () => {
    const fan = prepareFanCurve(
      points([0, 30], [0.001, 34], [0.002, 20], [0.003, 28], [0.004, 15], [0.005, 0]),
    );
    expect(fan).toMatchObject({ isNonIncreasing: false, stallBelow_m3PerS: 0.003 });
  });

  test('prolongs a curve that ends under pressure by its last chord', () => {
    const fan = prepareFanCurve(points([0, 40], [0.002, 30], [0.004, 10]));
    expect(fan.freeFlow_m3PerS).toBeCloseTo(0.005, 15);
    expect(fan.curve.y.at(-1)).toBe(0);
  });

  test('prolongs by the mean fall where the last chord is the flatter one', () => {
    const fan = prepareFanCurve(points([0, 40], [0.002, 12], [0.004, 10]));
    expect(fan.freeFlow_m3PerS).toBeCloseTo(0.004 + 10 / 7500, 15);
  });
});

describe('fanCurveProblem', () => {
  test('has nothing against a good table, with or without a dip', () => {
    expect(fanCurveProblem(points([0, 40], [0.004, 0]))).toBe(null);
    expect(fanCurveProblem(points([0, 40], [0.001, 20], [0.002, 25], [0.004, 0]))).toBe(null);
  });

  test.each([
    [points(), { code: 'tooFewPoints', count: 0 }],
    [points([0, 40]), { code: 'tooFewPoints', count: 1 }],
    [points([0, 40], [0.002, -1]), { code: 'negative', index: 1 }],
    [points([-0.001, 40], [0.002, 1]), { code: 'negative', index: 0 }],
    [points([0, 40], [Number.NaN, 1]), { code: 'negative', index: 1 }],
    [points([0, 40], [0.003, 20], [0.002, 10], [0.004, 0]), { code: 'flowNotRising', index: 2 }],
    [points([0, 40], [0.002, 20], [0.002, 10]), { code: 'flowTwice', index: 2 }],
    [points([0, 40], [0.002, 10], [0.004, 12]), { code: 'risesAtEnd', index: 2 }],
    [points([0, 10], [0.002, 30], [0.004, 20]), { code: 'endsAboveStart', index: 2 }],
    [points([0, 10], [0.002, 10]), { code: 'endsAboveStart', index: 1 }],
    [points([0, 0], [0.002, 0]), { code: 'noPressure', index: 0 }],
  ])('tells the first thing wrong (%#)', (table, problem) => {
    expect(fanCurveProblem(table)).toEqual(problem);
  });
});
