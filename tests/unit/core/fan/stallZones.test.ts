import { describe, expect, test } from 'vitest';
import { prepareFanCurve } from '../../../../src/core/fan/fanCurve.ts';
import { stallZones } from '../../../../src/core/fan/stallZones.ts';

const zones = (...pairs: [number, number][]) =>
  stallZones(prepareFanCurve(pairs.map(([flow_m3PerS, dp_Pa]) => ({ flow_m3PerS, dp_Pa })))).map((zone) => [
    zone.from_m3PerS,
    zone.to_m3PerS,
  ]);

describe('stallZones', () => {
  test('of a curve that only falls are none', () => {
    expect(zones([0, 40], [0.002, 30], [0.003, 30], [0.004, 0])).toEqual([]);
  });

  test('reach from each lowest to the next highest point', () => {
    expect(
      zones([0, 50], [0.001, 20], [0.002, 25], [0.003, 28], [0.004, 15], [0.005, 18], [0.006, 0]),
    ).toEqual([
      [0.001, 0.003],
      [0.004, 0.005],
    ]);
  });

  test('begin at shut-off where the curve rises from there', () => {
    expect(zones([0, 30], [0.001, 34], [0.004, 0])).toEqual([[0, 0.001]]);
  });

  test('end with the place below which the whole curve calls itself stalled', () => {
    const fan = prepareFanCurve([
      { flow_m3PerS: 0, dp_Pa: 50 },
      { flow_m3PerS: 0.001, dp_Pa: 20 },
      { flow_m3PerS: 0.002, dp_Pa: 30 },
      { flow_m3PerS: 0.004, dp_Pa: 0 },
    ]);
    expect(stallZones(fan).at(-1)?.to_m3PerS).toBe(fan.stallBelow_m3PerS);
  });
});
