import { describe, expect, test } from 'vitest';
import { prepareFanCurve } from '../../../../src/core/fan/fanCurve.ts';
import { fanGroupPressure } from '../../../../src/core/fan/fanGroupPressure.ts';
import { fanPressure } from '../../../../src/core/fan/fanPressure.ts';

const fan = prepareFanCurve([
  { flow_m3PerS: 0, dp_Pa: 45 },
  { flow_m3PerS: 0.004, dp_Pa: 31 },
  { flow_m3PerS: 0.01, dp_Pa: 0 },
]);
const out = new Float64Array(2);
const one = new Float64Array(2);

function group(sideBySide: number, inARow: number, flow_m3PerS: number) {
  fanGroupPressure(fan, { sideBySide, inARow }, flow_m3PerS, 0.9, 1.1, out);
  return [...out];
}

function single(flow_m3PerS: number) {
  fanPressure(fan, flow_m3PerS, 0.9, 1.1, one);
  return [...one];
}

describe('fanGroupPressure', () => {
  test('of one fan is that fan', () => {
    expect(group(1, 1, 0.003)).toEqual(single(0.003));
  });

  test('side by side: each fan carries its share', () => {
    expect(group(3, 1, 0.009)[0]).toBe(single(0.003)[0]);
  });

  test('in a row: pressures add', () => {
    expect(group(1, 2, 0.003)[0]).toBe(2 * (single(0.003)[0] as number));
  });

  test('two rows of three: derivative by the common flow', () => {
    const h = 1e-7;
    const difference =
      ((group(3, 2, 0.01 + h)[0] as number) - (group(3, 2, 0.01 - h)[0] as number)) / (2 * h);
    expect((group(3, 2, 0.01)[1] as number) / difference).toBeCloseTo(1, 5);
  });
});
