import { describe, expect, test } from 'vitest';
import { prepareFanCurve } from '../../../../src/core/fan/fanCurve.ts';
import { fanPressure } from '../../../../src/core/fan/fanPressure.ts';

const fan = prepareFanCurve([
  { flow_m3PerS: 0, dp_Pa: 45 },
  { flow_m3PerS: 0.004, dp_Pa: 31 },
  { flow_m3PerS: 0.01, dp_Pa: 0 },
]);
const out = new Float64Array(2);

function at(flow_m3PerS: number, speedRatio = 1, rho_kgPerM3 = 1.2) {
  fanPressure(fan, flow_m3PerS, speedRatio, rho_kgPerM3, out);
  return { dp_Pa: out[0] as number, perFlow: out[1] as number };
}

describe('fanPressure', () => {
  test('at rated speed in air of 1.2 kg/m³ is the curve itself', () => {
    expect(at(0).dp_Pa).toBe(45);
    expect(at(0.004).dp_Pa).toBeCloseTo(31, 13);
    expect(at(0.01).dp_Pa).toBeCloseTo(0, 13);
  });

  test('at half speed has a quarter of the pressure at half the flow', () => {
    expect(at(0.002, 0.5).dp_Pa).toBeCloseTo(31 / 4, 13);
  });

  test('follows the density at equal volume flow', () => {
    expect(at(0.004, 1, 0.9).dp_Pa).toBeCloseTo(0.75 * 31, 13);
  });

  test.each([
    [0.003, 1, 1.2],
    [0.005, 0.7, 1.0],
    [0.02, 1.1, 1.1],
  ])('gives the derivative by flow (%f m³/s)', (flow, speed, rho) => {
    const h = 1e-7;
    const difference = (at(flow + h, speed, rho).dp_Pa - at(flow - h, speed, rho).dp_Pa) / (2 * h);
    expect(at(flow, speed, rho).perFlow / difference).toBeCloseTo(1, 5);
  });

  test('beyond its free flow brakes the air', () => {
    expect(at(0.012).dp_Pa).toBeLessThan(0);
  });
});
