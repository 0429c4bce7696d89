import { describe, expect, test } from 'vitest';
import { findOperatingPoints } from '../../../../src/core/fan/findOperatingPoints.ts';

describe('findOperatingPoints', () => {
  test('finds the one crossing of two straight curves', () => {
    const found = findOperatingPoints(
      (flow) => 40 - 1e4 * flow,
      (flow) => 1e4 * flow,
      0.004,
    );
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ stable: true, dp_Pa: expect.closeTo(20, 9) });
    expect(found[0]?.flow_m3PerS).toBeCloseTo(0.002, 14);
  });

  test('calls a crossing unstable where the fan rises more steeply than the system', () => {
    const wave = (flow: number) => 20 + 5 * Math.sin(flow * 5000);
    const found = findOperatingPoints(wave, () => 20, 0.0021);
    expect(found.map(({ stable }) => stable)).toEqual([true, false, true]);
    found.forEach(({ flow_m3PerS }, i) => {
      expect(flow_m3PerS).toBeCloseTo(((i + 1) * Math.PI) / 5000, 12);
    });
  });

  test('finds nothing where the box takes more than the fan gives at any flow', () => {
    expect(
      findOperatingPoints(
        () => 10,
        () => 20,
        0.004,
      ),
    ).toEqual([]);
  });
});
