import { describe, expect, test } from 'vitest';
import { hysteresis } from '../../../../src/core/fan/hysteresis.ts';

const point = (flow_m3PerS: number, stable: boolean) => ({ flow_m3PerS, stable });

describe('hysteresis', () => {
  test('of one point is that point from either side', () => {
    const only = point(0.004, true);
    expect(hysteresis([only])).toEqual({ fromRest: only, fromFreeDelivery: only });
  });

  test('starts at the stable point with least flow and keeps the one with most', () => {
    const points = [point(0.002, true), point(0.0024, false), point(0.0026, true)];
    expect(hysteresis(points)).toEqual({ fromRest: points[0], fromFreeDelivery: points[2] });
  });

  test('passes over points that do not hold, in whatever order they come', () => {
    const points = [point(0.003, false), point(0.005, true), point(0.001, false), point(0.002, true)];
    expect(hysteresis(points)?.fromRest).toBe(points[3]);
    expect(hysteresis(points)?.fromFreeDelivery).toBe(points[1]);
  });

  test('is none without a stable point', () => {
    expect(hysteresis([])).toBeNull();
    expect(hysteresis([point(0.003, false)])).toBeNull();
  });
});
