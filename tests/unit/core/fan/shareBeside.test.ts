import { describe, expect, test } from 'vitest';
import { fallingCurve, fallingLoss } from '../../../../src/core/fan/fallingCurve.ts';
import { shareBeside } from '../../../../src/core/fan/shareBeside.ts';
import { preparePchip } from '../../../../src/core/solve/pchip.ts';

const line = (shutOff: number, free: number) =>
  fallingCurve(preparePchip([0, free], [shutOff, 0]), {
    left: -shutOff / free,
    right: -shutOff / free,
    window_Pa: 200,
  });

describe('shareBeside', () => {
  test('divides evenly among equals', () => {
    const { dp_Pa, flows_m3PerS } = shareBeside([line(40, 10), line(40, 10)], 8, 100);
    expect(dp_Pa).toBeCloseTo(24, 10);
    expect(flows_m3PerS[0]).toBeCloseTo(4, 10);
    expect(flows_m3PerS[1]).toBeCloseTo(4, 10);
  });

  test('finds the one pressure: 40 − 4q and 20 − 4(8 − q) meet at 6.5', () => {
    const { dp_Pa, flows_m3PerS } = shareBeside([line(40, 10), line(20, 5)], 8, 100);
    expect(flows_m3PerS[0]).toBeCloseTo(6.5, 10);
    expect(flows_m3PerS[1]).toBeCloseTo(1.5, 10);
    expect(dp_Pa).toBeCloseTo(14, 10);
  });

  test('sends air back through the weak one where the strong one is throttled', () => {
    // 40 − 4q = 20 − 4(1 − q) at q = 3.
    const { flows_m3PerS } = shareBeside([line(40, 10), line(20, 5)], 1, 100);
    expect(flows_m3PerS[0]).toBeCloseTo(3, 10);
    expect(flows_m3PerS[1]).toBeCloseTo(-2, 10);
  });

  test('divides a level stretch in proportion, so that the flows add up', () => {
    const level = fallingCurve(preparePchip([0, 2, 6, 9], [30, 22, 22, 0]), {
      left: -4,
      right: -4,
      window_Pa: 200,
    });
    const { dp_Pa, flows_m3PerS } = shareBeside([level, level], 7, 100);
    expect(dp_Pa).toBeCloseTo(22, 10);
    expect(flows_m3PerS[0]).toBeCloseTo(3.5, 10);
    expect(flows_m3PerS[1]).toBeCloseTo(3.5, 10);
  });

  test.each([-500, 500, 12])('adds up far outside the curves too (%d)', (flow) => {
    const { flows_m3PerS } = shareBeside([line(40, 10), fallingLoss(0.5, 200)], flow, 100);
    expect((flows_m3PerS[0] as number) + (flows_m3PerS[1] as number)).toBeCloseTo(flow, 9);
  });
});
