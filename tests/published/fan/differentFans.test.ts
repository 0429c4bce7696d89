import { describe, expect, test } from 'vitest';
import { prepareFanCurve } from '../../../src/core/fan/fanCurve.ts';
import { type FanMember, prepareFanGroup } from '../../../src/core/fan/fanGroup.ts';
import { fanPressure } from '../../../src/core/fan/fanPressure.ts';
import { findOperatingPoints } from '../../../src/core/fan/findOperatingPoints.ts';
import { published } from '../../helpers/published.ts';

// Straight curves of invented fans on boxes that take a·Q² Pa (Q in m³/h): a quadratic each.
const hand = published({
  source: 'ownComputation',
  where: 'worked by hand in closed form, a quadratic',
  kind: 'computed elsewhere',
  methods: ['fanGroup', 'standingFan'],
});

/** Passes √p m³/h at p Pa and 1.2 kg/m³ while it stands still. */
const standing = { loss: 8, area_m2: Math.sqrt((1.2 * 8) / 2) / 3600 };

const straight = (
  shutOff_Pa: number,
  free_m3PerH: number,
  place: FanMember['place'],
  speedRatio = 1,
): FanMember => ({
  curve: prepareFanCurve([
    { flow_m3PerS: 0, dp_Pa: shutOff_Pa },
    { flow_m3PerS: free_m3PerH / 3600, dp_Pa: 0 },
  ]),
  speedRatio,
  sideBySide: 1,
  inARow: 1,
  place,
  standing,
});

function run(members: readonly FanMember[], a: number) {
  const { curve, shares } = prepareFanGroup(members);
  const out = new Float64Array(2);
  const fan_Pa = (flow: number) => {
    fanPressure(curve, flow, 1, 1.2, out);
    return out[0] as number;
  };
  const points = findOperatingPoints(fan_Pa, (flow) => a * (flow * 3600) ** 2, curve.freeFlow_m3PerS);
  expect(points).toHaveLength(1);
  const [{ flow_m3PerS, dp_Pa } = { flow_m3PerS: Number.NaN, dp_Pa: Number.NaN }] = points;
  return {
    flow_m3PerH: flow_m3PerS * 3600,
    dp_Pa,
    own: shares(flow_m3PerS, 1.2).map((share) => ({
      flow_m3PerH: share.flow_m3PerS * 3600,
      dp_Pa: share.dp_Pa,
    })),
  };
}

const expectAll = (
  quantities: readonly string[],
  numbers: readonly (number | undefined)[],
  printed: readonly string[],
) => {
  quantities.forEach((quantity, i) => {
    hand.says(quantity, numbers[i] ?? Number.NaN, printed[i] ?? '');
  });
};
const flow = 'flow [m³/h]';
const pressure = 'pressure [Pa]';

describe('40·(1 − Q/10) beside 30·(1 − Q/10) Pa: Q = 20 − 7p/12', () => {
  const fans = [straight(40, 10, 'first'), straight(30, 10, 'beside')];

  test.each([
    [0.1, ['11.83265', '14.00117', '6.499708', '5.332944']],
    [0.5, ['6.742085', '22.72785', '4.318036', '2.424049']],
    [2, ['3.733944', '27.88467', '3.028833', '0.7051106']],
  ] as const)('on a box of %f Q²: flow, pressure, flow of each %j', (a, printed) => {
    const { flow_m3PerH, dp_Pa, own } = run(fans, a);
    expectAll(
      [flow, pressure, 'flow of the first [m³/h]', 'flow of the other [m³/h]'],
      [flow_m3PerH, dp_Pa, own[0]?.flow_m3PerH, own[1]?.flow_m3PerH],
      printed,
    );
  });

  test('against a closed box holds 240/7 Pa, 1.428571 m³/h running back through the weaker one', () => {
    const { curve, shares } = prepareFanGroup(fans);
    const [one, other] = shares(0, 1.2);
    hand.says('pressure at no flow [Pa]', curve.shutOff_Pa, '34.28571');
    hand.says('flow of the first [m³/h]', (one?.flow_m3PerS ?? Number.NaN) * 3600, '1.428571');
    hand.says('flow of the other [m³/h]', (other?.flow_m3PerS ?? Number.NaN) * 3600, '-1.428571');
    expect(other?.backwards).toBe(true);
  });
});

describe('40·(1 − Q/10) with 30·(1 − Q/6) Pa behind it: p = 70 − 9Q', () => {
  test.each([
    [0.5, ['5.866069', '17.20538', '16.53573', '0.6696563']],
    // Beyond the 6 m³/h of its free delivery the second one is in the way.
    [0.1, ['7.201533', '5.186207', '11.19387', '-6.007663']],
  ] as const)('on a box of %f Q²: flow, pressure, pressure of each %j', (a, printed) => {
    const { flow_m3PerH, dp_Pa, own } = run([straight(40, 10, 'first'), straight(30, 6, 'behind')], a);
    expectAll(
      [flow, pressure, 'pressure of the first [Pa]', 'pressure of the second [Pa]'],
      [flow_m3PerH, dp_Pa, own[0]?.dp_Pa, own[1]?.dp_Pa],
      printed,
    );
  });
});

describe('40·(1 − Q/10) Pa beside one that stands still and lets √p m³/h back: Q = 10 − p/4 − √p', () => {
  test.each([
    [0.25, ['5.4356', '7.3864', '-2.7178']],
    [1, ['3.4833', '12.1335', '-3.4833']],
  ] as const)('on a box of %f Q²: flow, pressure, flow through the hole %j', (a, printed) => {
    const { flow_m3PerH, dp_Pa, own } = run([straight(40, 10, 'first'), straight(30, 6, 'beside', 0)], a);
    const slack = { within: 3e-5, because: 'the joined curve aims at a hundred-thousandth of shut-off' };
    hand.says(flow, flow_m3PerH, printed[0], slack);
    hand.says(pressure, dp_Pa, printed[1], slack);
    hand.says('flow through the hole [m³/h]', own[1]?.flow_m3PerH ?? Number.NaN, printed[2], slack);
  });
});

describe('40·(1 − Q/10) Pa before one that stands still, there 0.3 Q²: p = 40 − 4Q − 0.3Q²', () => {
  test.each([
    [0.2, ['5.797959', '6.723266']],
    [0.7, ['4.633250', '15.02690']],
  ] as const)('on a box of %f Q²: flow and pressure %j', (a, printed) => {
    const still: FanMember = {
      ...straight(30, 6, 'behind', 0),
      standing: { loss: 0.3 * 8, area_m2: standing.area_m2 },
    };
    const { flow_m3PerH, dp_Pa } = run([straight(40, 10, 'first'), still], a);
    expectAll([flow, pressure], [flow_m3PerH, dp_Pa], printed);
  });
});
