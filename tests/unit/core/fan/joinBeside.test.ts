import { describe, expect, test } from 'vitest';
import { crossingAt, fallingCurve, fallingLoss } from '../../../../src/core/fan/fallingCurve.ts';
import { joinBeside } from '../../../../src/core/fan/joinBeside.ts';
import { evaluatePchip, preparePchip } from '../../../../src/core/solve/pchip.ts';

const beyond = { left: -10, right: -4, window_Pa: 200 };
const curves = {
  straight: fallingCurve(preparePchip([0, 10], [40, 0]), beyond),
  bent: fallingCurve(preparePchip([0, 3, 5, 8], [25, 24, 8, 0]), beyond),
  dipping: fallingCurve(preparePchip([0, 4, 8, 9, 12, 16, 20], [50, 36, 18, 30, 29, 17, 0]), beyond),
  level: fallingCurve(preparePchip([0, 2, 6, 9], [30, 22, 22, 0]), beyond),
  hole: fallingLoss(0.5, 200),
};
const out = new Float64Array(2);

describe('joinBeside', () => {
  test.each([
    ['straight', 'straight'],
    ['straight', 'bent'],
    ['bent', 'dipping'],
    ['level', 'level'],
    ['level', 'hole'],
    ['dipping', 'hole'],
    ['hole', 'hole'],
  ] as const)('adds the flows at every pressure: %s and %s', (one, other) => {
    const both = [curves[one], curves[other]];
    const joined = joinBeside(both, 50, -30);
    for (let dp = 49.9; dp > -30; dp -= 0.37) {
      const flow = both.reduce((sum, curve) => sum + crossingAt(curve, dp).least, 0);
      evaluatePchip(joined, flow, out);
      // A hundred-thousandth of the span of pressures is aimed at in the middle between knots.
      expect(Math.abs((out[0] as number) - dp)).toBeLessThan(3e-5 * 80);
    }
  });

  test('is strictly rising in flow and never in pressure', () => {
    const { x, y } = joinBeside(Object.values(curves), 50, -30);
    for (let i = 1; i < x.length; i++) {
      expect(x[i]).toBeGreaterThan(x[i - 1] as number);
      expect(y[i]).toBeLessThanOrEqual(y[i - 1] as number);
    }
  });

  test('of straight lines needs no knots but theirs', () => {
    const line = fallingCurve(preparePchip([0, 10], [40, 0]), { left: -4, right: -4, window_Pa: 200 });
    const { x } = joinBeside([line, line], 40, -20);
    expect(Array.from(x)).toEqual([0, 20, expect.closeTo(30, 10)]);
  });

  test('bends where one of them does', () => {
    const joined = joinBeside([curves.straight, curves.bent], 40, -20);
    // The bent one gives 0 at 25 Pa, the straight one 3.75; above it runs back with 10 Pa per flow.
    evaluatePchip(joined, 3.75 - 0.1, out);
    expect(out[1]).toBeCloseTo(-1 / (1 / 4 + 1 / 10), 6);
    const [slopeOfBent] = preparePchip([0, 3, 5, 8], [25, 24, 8, 0]).slope;
    evaluatePchip(joined, 3.75 + 1e-4, out);
    expect(out[1]).toBeCloseTo(-1 / (1 / 4 + 1 / Math.abs(slopeOfBent as number)), 3);
  });
});
