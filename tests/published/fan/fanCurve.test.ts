import { describe, expect, test } from 'vitest';
import { prepareFanCurve } from '../../../src/core/fan/fanCurve.ts';
import { fanGroupPressure } from '../../../src/core/fan/fanGroupPressure.ts';
import { fanPressure } from '../../../src/core/fan/fanPressure.ts';
import { findOperatingPoints } from '../../../src/core/fan/findOperatingPoints.ts';
import { stallZones } from '../../../src/core/fan/stallZones.ts';
import { expectPublished } from '../../helpers/published.ts';

// Source of every number in this file: independent computation with scipy 1.10.1 (PchipInterpolator, brentq) on two
// invented fans. Flows in m³/h as there; the pressures hold at 1.2 kg/m³.

const perHour = 1 / 3600;
const out = new Float64Array(2);

function fan(flows_m3PerH: readonly number[], dps_Pa: readonly number[]) {
  return prepareFanCurve(
    flows_m3PerH.map((flow, i) => ({ flow_m3PerS: flow * perHour, dp_Pa: dps_Pa[i] as number })),
  );
}

const fanA = fan([0, 8, 16, 24, 32, 40], [45, 38, 31, 24, 14, 0]);

function pressure_Pa(flow_m3PerH: number, speedRatio = 1): number {
  fanPressure(fanA, flow_m3PerH * perHour, speedRatio, 1.2, out);
  return out[0] as number;
}

describe('Fan A between its points (Fritsch & Carlson 1980, second implementation)', () => {
  test.each([
    [0, '-0.875'],
    [1, '-0.875'],
    [2, '-0.875'],
    [3, '-1.02941'],
    [4, '-1.45833'],
    [5, '-2.0'],
  ])('slope at point %d is %s Pa per m³/h', (index, printed) => {
    expectPublished((fanA.curve.slope[index] as number) * perHour, printed);
  });

  test.each([
    [12, '34.5'],
    [20, '27.6544'],
    [28, '19.4289'],
    [36, '7.5417'],
  ])('at %d m³/h gives %s Pa', (flow, printed) => {
    expectPublished(pressure_Pa(flow), printed);
  });

  test('at 10 of 12 V gives 19.2044 Pa at 16.667 m³/h', () => {
    expectPublished(pressure_Pa(20 * (10 / 12), 10 / 12), '19.2044', {
      within: 3e-6,
      because: 'computed there from 27.6544, four decimals',
    });
  });
});

describe('Where fan A meets a box of a·Q² (brentq)', () => {
  const groups = {
    single: { sideBySide: 1, inARow: 1 },
    'two side by side': { sideBySide: 2, inARow: 1 },
    'two in a row': { sideBySide: 1, inARow: 2 },
  };
  test.each([
    ['single', 0.05, '22.5480', '25.4207'],
    ['two side by side', 0.05, '25.9423', '33.6502'],
    ['two in a row', 0.05, '27.9354', '39.0194'],
    ['single', 0.02, '29.5337', '17.4448'],
    ['two side by side', 0.02, '37.7944', '28.5683'],
    ['two in a row', 0.02, '33.7206', '22.7416'],
  ] as const)('%s, a = %f: %s m³/h at %s Pa', (name, a, flow, dp) => {
    const group = groups[name];
    const found = findOperatingPoints(
      (q) => {
        fanGroupPressure(fanA, group, q, 1, 1.2, out);
        return out[0] as number;
      },
      (q) => a * (q / perHour) ** 2,
      fanA.freeFlow_m3PerS * group.sideBySide,
    );
    expect(found).toHaveLength(1);
    expect(found[0]?.stable).toBe(true);
    expectPublished((found[0]?.flow_m3PerS as number) / perHour, flow);
    expectPublished(found[0]?.dp_Pa as number, dp);
  });
});

describe('A fan with a dip at a box of 0.35·Q² (brentq on every bracket)', () => {
  const dipped = fan([0, 4, 8, 9, 12, 16, 20], [50, 36, 18, 30, 29, 17, 0]);
  const found = findOperatingPoints(
    (q) => {
      fanPressure(dipped, q, 1, 1.2, out);
      return out[0] as number;
    },
    (q) => 0.35 * (q / perHour) ** 2,
    dipped.freeFlow_m3PerS,
  );

  test.each([
    [0, '7.352', true],
    [1, '8.610', false],
    [2, '9.257', true],
  ])('crossing %d is at %s m³/h, stable: %s', (index, printed, stable) => {
    expectPublished((found[index]?.flow_m3PerS as number) / perHour, printed);
    expect(found[index]?.stable).toBe(stable);
  });

  test('there are three, and the unstable one is where the curve rises, from 8 to 9 m³/h', () => {
    expect(found).toHaveLength(3);
    const [zone, ...more] = stallZones(dipped);
    expect(more).toEqual([]);
    expect((zone?.from_m3PerS as number) / perHour).toBeCloseTo(8, 12);
    expect((zone?.to_m3PerS as number) / perHour).toBeCloseTo(9, 12);
  });
});
