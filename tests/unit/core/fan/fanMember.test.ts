import { describe, expect, test } from 'vitest';
import { crossingAt } from '../../../../src/core/fan/fallingCurve.ts';
import { prepareFanCurve } from '../../../../src/core/fan/fanCurve.ts';
import {
  type FanMember,
  freeDelivery_m3PerS,
  memberFalling,
  memberStage,
  scaledCurve,
  top_Pa,
} from '../../../../src/core/fan/fanMember.ts';
import { evaluatePchip, preparePchip } from '../../../../src/core/solve/pchip.ts';

const curve = prepareFanCurve([
  { flow_m3PerS: 0, dp_Pa: 30 },
  { flow_m3PerS: 2, dp_Pa: 34 },
  { flow_m3PerS: 8, dp_Pa: 0 },
]);
const member: FanMember = {
  curve,
  speedRatio: 0.5,
  sideBySide: 3,
  inARow: 2,
  place: 'first',
  standing: { loss: 8, area_m2: 0.5 },
};
const still = { ...member, speedRatio: 0 };
const out = new Float64Array(2);
const stageAt = (own: FanMember, flow: number) => {
  memberStage(own).evaluate(flow, out);
  return [out[0] as number, out[1] as number] as const;
};

describe('scaledCurve', () => {
  test('is the curve through the scaled points', () => {
    const scaled = scaledCurve(curve.curve, 1.5, 0.5);
    const again = preparePchip([0, 3, 12], [15, 17, 0]);
    expect(scaled.x).toEqual(again.x);
    expect(scaled.y).toEqual(again.y);
    scaled.slope.forEach((slope, i) => {
      expect(slope).toBeCloseTo(again.slope[i] as number, 13);
    });
  });
});

describe('a member that turns', () => {
  test('has the pressure of its row at the flow of its lanes', () => {
    evaluatePchip(curve.curve, 6 / 1.5, out);
    const [dp, perFlow] = [(out[0] as number) * 0.5, ((out[1] as number) * 0.5) / 1.5];
    expect(stageAt(member, 6)[0]).toBeCloseTo(dp, 13);
    expect(stageAt(member, 6)[1]).toBeCloseTo(perFlow, 13);
  });

  test('knows its highest pressure and its free delivery', () => {
    expect(top_Pa(member)).toBeCloseTo(17, 13);
    expect(freeDelivery_m3PerS(member)).toBeCloseTo(12, 13);
  });

  test('above its highest pressure lets air back against the mean fall of its curve', () => {
    // Beyond 17 Pa: from 15 Pa at rest on, 30/8 Pa per flow at rated speed and one fan, here times 0.5·2/3.
    expect(crossingAt(memberFalling(member, 100), 25).least).toBeCloseTo(
      -(25 - 15) / ((30 / 8) * (1 / 3)),
      11,
    );
  });

  test('lets air back no easier where it turns very slowly', () => {
    const slow = { ...member, speedRatio: 0.01 };
    expect(crossingAt(memberFalling(slow, 100), 25).least).toBeGreaterThan(-25 / ((30 / 8) * 0.3 * (2 / 3)));
  });
});

describe('a curve that begins at some flow', () => {
  const late = (first: number, next: number): FanMember => ({
    ...member,
    speedRatio: 1,
    sideBySide: 1,
    inARow: 1,
    curve: prepareFanCurve([
      { flow_m3PerS: 2, dp_Pa: first },
      { flow_m3PerS: 4, dp_Pa: next },
      { flow_m3PerS: 8, dp_Pa: 0 },
    ]),
  });

  test('goes straight back to no flow where it falls', () => {
    const falls = late(20, 14);
    expect(top_Pa(falls)).toBeCloseTo(20 - 2 * (falls.curve.curve.slope[0] as number), 12);
  });

  test('is level back to no flow where it rises', () => {
    const rises = late(20, 24);
    expect(stageAt(rises, 0)).toEqual([20, 0]);
    expect(stageAt(rises, 1)[0]).toBeCloseTo(20, 12);
    expect(top_Pa(rises)).toBe(24);
  });
});

describe('a member that stands still', () => {
  test('takes its velocity heads, either way, all lanes and the whole row', () => {
    // 6 through 3 lanes of 0.5 m² is 4 m/s: 2·8·0.6·16 Pa.
    expect(stageAt(still, 6)[0]).toBeCloseTo(-153.6, 11);
    expect(stageAt(still, -6)[0]).toBeCloseTo(153.6, 11);
    expect(crossingAt(memberFalling(still, 200), 153.6).least).toBeCloseTo(-6, 11);
  });

  test('gives no pressure and delivers nothing', () => {
    expect(top_Pa(still)).toBe(0);
    expect(freeDelivery_m3PerS(still)).toBe(0);
  });

  test('is some resistance even where its loss is given as none', () => {
    const none = { ...still, standing: { loss: 0, area_m2: 0.5 } };
    expect(stageAt(none, 6)[0]).toBeLessThan(0);
  });
});
