import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type FanPoint, fanCurveProblem, prepareFanCurve } from '../../src/core/fan/fanCurve.ts';
import { fanGroupPressure } from '../../src/core/fan/fanGroupPressure.ts';
import { scaleFanDuty } from '../../src/core/fan/fanLaws.ts';
import { fanPressure } from '../../src/core/fan/fanPressure.ts';
import { findOperatingPoints } from '../../src/core/fan/findOperatingPoints.ts';
import { stallZones } from '../../src/core/fan/stallZones.ts';

const runs = { seed: 20261125, numRuns: 300 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** A table that only falls, with or without its last point at no pressure. */
const falling = fc
  .tuple(
    fc.array(fc.tuple(between(1e-4, 3e-3), between(0.1, 20)), { minLength: 2, maxLength: 8 }),
    fc.boolean(),
  )
  .map(([steps, closed]): FanPoint[] => {
    let flow = 0;
    let dp = steps.reduce((sum, [, fall]) => sum + fall, closed ? 0 : 3);
    return [
      { flow_m3PerS: 0, dp_Pa: dp },
      ...steps.map(([step, fall], i) => {
        flow += step;
        dp = closed && i === steps.length - 1 ? 0 : dp - fall;
        return { flow_m3PerS: flow, dp_Pa: Math.max(0, dp) };
      }),
    ];
  });

/** A table with dips: any pressures, the last one nil. */
const wavy = fc
  .array(fc.tuple(between(5e-4, 3e-3), between(5, 60)), { minLength: 3, maxLength: 7 })
  .map((steps): FanPoint[] => {
    let flow = 0;
    const points = steps.map(([step, dp_Pa], i) => {
      if (i > 0) flow += step;
      return { flow_m3PerS: flow, dp_Pa };
    });
    return [...points, { flow_m3PerS: flow + 1e-3, dp_Pa: 0 }];
  });

function pressure(
  points: readonly FanPoint[],
  flow: number,
  speed = 1,
  rho = 1.2,
): readonly [number, number] {
  const out = new Float64Array(2);
  fanPressure(prepareFanCurve(points), flow, speed, rho, out);
  return [out[0] as number, out[1] as number];
}

describe('laws of fans', () => {
  test('a table that only falls is a curve that only falls, to no pressure at its free delivery', () => {
    fc.assert(
      fc.property(falling, (points) => {
        expect(fanCurveProblem(points)).toBeNull();
        const fan = prepareFanCurve(points);
        expect(fan.isNonIncreasing).toBe(true);
        expect(stallZones(fan)).toEqual([]);
        let before = Number.POSITIVE_INFINITY;
        for (let i = 0; i <= 60; i++) {
          const [dp] = pressure(points, (fan.freeFlow_m3PerS * i) / 60);
          expect(dp).toBeLessThanOrEqual(before + 1e-10);
          before = dp;
        }
        expect(Math.abs(before)).toBeLessThan(1e-9 * fan.shutOff_Pa);
      }),
      runs,
    );
  });

  test('speed and density scale the curve just as they scale a duty', () => {
    fc.assert(
      fc.property(
        falling,
        between(0, 1),
        between(0.3, 1.5),
        between(0.6, 1.4),
        (points, share, speed, rho) => {
          const flow = share * prepareFanCurve(points).freeFlow_m3PerS;
          const [dp_Pa] = pressure(points, flow);
          const duty = scaleFanDuty(
            { flow_m3PerS: flow, dp_Pa, power_W: 1 },
            { speed, size: 1, density: rho / 1.2 },
          );
          expect(Math.abs(pressure(points, duty.flow_m3PerS, speed, rho)[0] - duty.dp_Pa)).toBeLessThan(1e-9);
        },
      ),
      runs,
    );
  });

  test('a fan that only falls meets a box that only rises once, stably, and faster running moves more', () => {
    fc.assert(
      fc.property(falling, between(0.05, 20), between(0.5, 0.95), (points, steepness, slower) => {
        const fan = prepareFanCurve(points);
        const a = (steepness * fan.shutOff_Pa) / fan.freeFlow_m3PerS ** 2;
        const meet = (speed: number) =>
          findOperatingPoints(
            (q) => pressure(points, q, speed)[0],
            (q) => a * q * q,
            fan.freeFlow_m3PerS * speed,
          );
        const [fast, ...others] = meet(1);
        const [slow] = meet(slower);
        expect(others).toEqual([]);
        expect(fast?.stable).toBe(true);
        // A box of velocity heads follows the fan laws: flow goes as speed.
        expect(Math.abs((slow?.flow_m3PerS ?? 0) / ((fast?.flow_m3PerS ?? 0) * slower) - 1)).toBeLessThan(
          1e-9,
        );
      }),
      { ...runs, numRuns: 100 },
    );
  });

  test('intersections take turns, stable ones first and last, and lie on both curves', () => {
    fc.assert(
      fc.property(wavy, between(0.1, 10), (points, steepness) => {
        const fan = prepareFanCurve(points);
        const a = (steepness * 40) / fan.freeFlow_m3PerS ** 2;
        const found = findOperatingPoints(
          (q) => pressure(points, q)[0],
          (q) => a * q * q,
          fan.freeFlow_m3PerS,
        );
        expect(found.length % 2).toBe(1);
        found.forEach(({ flow_m3PerS, dp_Pa, stable }, i) => {
          expect(stable).toBe(i % 2 === 0);
          expect(Math.abs(dp_Pa - a * flow_m3PerS ** 2)).toBeLessThan(1e-7);
          const [, slope] = pressure(points, flow_m3PerS);
          // On a touching crossing the two slopes are equal to rounding.
          expect((2 * a * flow_m3PerS - slope) * (stable ? 1 : -1)).toBeGreaterThan(-1e-3 * Math.abs(slope));
        });
      }),
      { ...runs, numRuns: 100 },
    );
  });

  test('two fans never move less than one, whichever way they stand', () => {
    fc.assert(
      fc.property(falling, between(0.05, 20), fc.boolean(), (points, steepness, row) => {
        const fan = prepareFanCurve(points);
        const a = (steepness * fan.shutOff_Pa) / fan.freeFlow_m3PerS ** 2;
        const out = new Float64Array(2);
        const flow = (sideBySide: number, inARow: number) => {
          const group = (q: number) => {
            fanGroupPressure(fan, { sideBySide, inARow }, q, 1, 1.2, out);
            return out[0] as number;
          };
          return (
            findOperatingPoints(group, (q) => a * q * q, fan.freeFlow_m3PerS * sideBySide)[0]?.flow_m3PerS ??
            0
          );
        };
        expect(row ? flow(1, 2) : flow(2, 1)).toBeGreaterThanOrEqual(flow(1, 1) * (1 - 1e-9));
      }),
      { ...runs, numRuns: 100 },
    );
  });
});
