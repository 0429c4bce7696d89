import { describe, expect, test } from 'vitest';
import { type FanCurve, prepareFanCurve } from '../../../src/core/fan/fanCurve.ts';
import { prepareFanGroup } from '../../../src/core/fan/fanGroup.ts';
import { fanPressure } from '../../../src/core/fan/fanPressure.ts';
import { findOperatingPoints } from '../../../src/core/fan/findOperatingPoints.ts';
import { hysteresis } from '../../../src/core/fan/hysteresis.ts';
import { stallZones } from '../../../src/core/fan/stallZones.ts';
import { published } from '../../helpers/published.ts';

// Invented fans on boxes that take a·Q² Pa (Q in m³/h).
const scipy = published({
  source: 'ownComputation',
  where: 'Python library scipy 1.10.1, PchipInterpolator and Brent',
  kind: 'computed elsewhere',
  methods: ['fanGroup'],
});

const curveOf = (points: readonly (readonly [flow_m3PerH: number, dp_Pa: number])[]) =>
  prepareFanCurve(points.map(([q, dp_Pa]) => ({ flow_m3PerS: q / 3600, dp_Pa })));

/** Intersections in m³/h. */
function meet(fan: FanCurve, a: number, sideBySide = 1, inARow = 1) {
  const standing = { loss: 8, area_m2: 1e-3 };
  const { curve } = prepareFanGroup([
    { curve: fan, speedRatio: 1, sideBySide, inARow, place: 'first', standing },
  ]);
  const out = new Float64Array(2);
  const fan_Pa = (flow: number) => {
    fanPressure(curve, flow, 1, 1.2, out);
    return out[0] as number;
  };
  return findOperatingPoints(fan_Pa, (flow) => a * (flow * 3600) ** 2, curve.freeFlow_m3PerS).map(
    ({ flow_m3PerS, dp_Pa, stable }) => ({ flow_m3PerS, flow_m3PerH: flow_m3PerS * 3600, dp_Pa, stable }),
  );
}

describe('fan A: one, two side by side, two in a row', () => {
  const fanA = curveOf([
    [0, 45],
    [8, 38],
    [16, 31],
    [24, 24],
    [32, 14],
    [40, 0],
  ]);
  test.each([
    [0.05, 1, 1, '22.5480', '25.4207'],
    [0.05, 2, 1, '25.9423', '33.6502'],
    [0.05, 1, 2, '27.9354', '39.0194'],
    [0.02, 1, 1, '29.5337', '17.4448'],
    [0.02, 2, 1, '37.7944', '28.5683'],
    [0.02, 1, 2, '33.7206', '22.7416'],
  ])(
    'a box of %f Q² with %d side by side and %d in a row runs at %s m³/h and %s Pa',
    (a, sideBySide, inARow, flow, dp) => {
      const [point, ...rest] = meet(fanA, a, sideBySide, inARow);
      expect(rest).toEqual([]);
      expect(point?.stable).toBe(true);
      scipy.says('flow [m³/h]', point?.flow_m3PerH ?? Number.NaN, flow);
      scipy.says('pressure [Pa]', point?.dp_Pa ?? Number.NaN, dp);
    },
  );
});

describe('a fan with a dip at 8 m³/h on a box of 0.35 Q²', () => {
  const fan = curveOf([
    [0, 50],
    [4, 36],
    [8, 18],
    [9, 30],
    [12, 29],
    [16, 17],
    [20, 0],
  ]);

  test('meets it at 7.351946 (stable), 8.609836 (not stable) and 9.256795 m³/h (stable)', () => {
    const found = meet(fan, 0.35);
    expect(found.map(({ stable }) => stable)).toEqual([true, false, true]);
    ['7.351946', '8.609836', '9.256795'].forEach((printed, i) => {
      scipy.says(`flow of meeting ${i + 1} [m³/h]`, found[i]?.flow_m3PerH ?? Number.NaN, printed);
    });
  });

  test('is reached from rest at 7.351946 and kept from free delivery at 9.256795 m³/h', () => {
    const settled = hysteresis(meet(fan, 0.35));
    scipy.says('flow from rest [m³/h]', settled?.fromRest.flow_m3PerH ?? Number.NaN, '7.351946');
    scipy.says(
      'flow from free delivery [m³/h]',
      settled?.fromFreeDelivery.flow_m3PerH ?? Number.NaN,
      '9.256795',
    );
  });

  test('rises from 8 to 9 m³/h', () => {
    expect(
      stallZones(fan).map(({ from_m3PerS, to_m3PerS }) => [from_m3PerS * 3600, to_m3PerS * 3600]),
    ).toEqual([[8, 9]]);
  });
});
