import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fanCurveProblem, prepareFanCurve } from '../../src/core/fan/fanCurve.ts';
import { scaleFanDuty } from '../../src/core/fan/fanLaws.ts';
import { fanPressure } from '../../src/core/fan/fanPressure.ts';
import { findOperatingPoints } from '../../src/core/fan/findOperatingPoints.ts';
import { stallZones } from '../../src/core/fan/stallZones.ts';

const runs = { seed: 20261125, numRuns: 300 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const out = new Float64Array(2);

const table = (onlyFalling: boolean) =>
  fc.array(fc.tuple(between(0.2, 1), between(1, 30)), { minLength: 2, maxLength: 8 }).map((steps) => {
    let flow = 0;
    let dp_Pa = onlyFalling ? steps.reduce((sum, [, drop]) => sum + drop, 0) : 50;
    const points = steps.map(([wide, drop], i) => {
      const point = { flow_m3PerS: flow, dp_Pa: i === 0 || onlyFalling ? dp_Pa : drop };
      flow += wide * 1e-3;
      dp_Pa -= drop;
      return point;
    });
    return [...points, { flow_m3PerS: flow, dp_Pa: 0 }];
  });

describe('laws of fans', () => {
  test('a curve that only falls meets a box that only rises once, stably, inside the curve', () => {
    fc.assert(
      fc.property(
        table(true),
        between(1, 9),
        between(0.3, 1.2),
        between(0.6, 1.3),
        (points, log, speed, rho) => {
          const fan = prepareFanCurve(points);
          expect(fan.isNonIncreasing).toBe(true);
          const most = fan.freeFlow_m3PerS * speed;
          const found = findOperatingPoints(
            (flow) => {
              fanPressure(fan, flow, speed, rho, out);
              return out[0] as number;
            },
            (flow) => 10 ** log * flow * flow,
            most,
          );
          expect(found).toHaveLength(1);
          expect(found[0]?.stable).toBe(true);
          expect(found[0]?.flow_m3PerS as number).toBeLessThanOrEqual(most);
        },
      ),
      runs,
    );
  });

  test('with dips, stable and unstable crossings take turns and begin and end stable', () => {
    fc.assert(
      fc.property(table(false), between(5, 8), (points, log) => {
        const fan = prepareFanCurve(points);
        const found = findOperatingPoints(
          (flow) => {
            fanPressure(fan, flow, 1, 1.2, out);
            return out[0] as number;
          },
          (flow) => 10 ** log * flow * flow,
          fan.freeFlow_m3PerS,
        );
        expect(found.length % 2).toBe(1);
        found.forEach(({ stable }, i) => {
          expect(stable).toBe(i % 2 === 0);
        });
      }),
      runs,
    );
  });

  test('an unstable crossing lies in a stretch where the curve rises', () => {
    fc.assert(
      fc.property(table(false), between(5, 8), (points, log) => {
        const fan = prepareFanCurve(points);
        const zones = stallZones(fan);
        const found = findOperatingPoints(
          (flow) => {
            fanPressure(fan, flow, 1, 1.2, out);
            return out[0] as number;
          },
          (flow) => 10 ** log * flow * flow,
          fan.freeFlow_m3PerS,
        );
        for (const { flow_m3PerS, stable } of found) {
          if (stable) continue;
          const inside = zones.some(
            (zone) => zone.from_m3PerS <= flow_m3PerS && flow_m3PerS <= zone.to_m3PerS,
          );
          expect(inside).toBe(true);
        }
        expect(zones.length === 0).toBe(fan.isNonIncreasing);
      }),
      runs,
    );
  });

  test('speed and density scale a point of the curve exactly as the fan laws say', () => {
    fc.assert(
      fc.property(
        table(true),
        between(0, 1),
        between(0.2, 2),
        between(0.5, 2),
        (points, share, speed, density) => {
          const fan = prepareFanCurve(points);
          const flow_m3PerS = share * fan.freeFlow_m3PerS;
          fanPressure(fan, flow_m3PerS, 1, 1.2, out);
          const duty = scaleFanDuty(
            { flow_m3PerS, dp_Pa: out[0] as number, power_W: 1 },
            { speed, size: 1, density },
          );
          fanPressure(fan, duty.flow_m3PerS, speed, 1.2 * density, out);
          expect(Math.abs((out[0] as number) - duty.dp_Pa)).toBeLessThan(1e-10 * fan.shutOff_Pa * speed ** 2);
        },
      ),
      runs,
    );
  });

  test('every table of this kind is accepted, and every one turned round is not', () => {
    fc.assert(
      fc.property(table(true), (points) => {
        expect(fanCurveProblem(points)).toBe(null);
        expect(fanCurveProblem([...points].reverse())).not.toBe(null);
      }),
      runs,
    );
  });

  test('a table cut off above zero is closed without a rise', () => {
    fc.assert(
      fc.property(table(true), (points) => {
        const cut = points.slice(0, -1);
        fc.pre(cut.length >= 2);
        const fan = prepareFanCurve(cut);
        expect(fan.isNonIncreasing).toBe(true);
        expect(Number.isFinite(fan.freeFlow_m3PerS)).toBe(true);
        fanPressure(fan, fan.freeFlow_m3PerS, 1, 1.2, out);
        expect(Math.abs(out[0] as number)).toBeLessThan(1e-9);
      }),
      runs,
    );
  });
});
