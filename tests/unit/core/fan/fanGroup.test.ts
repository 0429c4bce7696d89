import { describe, expect, test } from 'vitest';
import { type FanCurve, prepareFanCurve } from '../../../../src/core/fan/fanCurve.ts';
import { type FanMember, prepareFanGroup } from '../../../../src/core/fan/fanGroup.ts';
import { fanPressure } from '../../../../src/core/fan/fanPressure.ts';
import { brentRoot } from '../../../../src/core/solve/brentRoot.ts';
import { evaluatePchip } from '../../../../src/core/solve/pchip.ts';

const curveOf = (...points: [flow_m3PerS: number, dp_Pa: number][]) =>
  prepareFanCurve(points.map(([flow_m3PerS, dp_Pa]) => ({ flow_m3PerS, dp_Pa })));

const strong = curveOf([0, 45], [0.004, 31], [0.008, 14], [0.01, 0]);
const weak = curveOf([0, 12], [0.001, 11.5], [0.0018, 6], [0.003, 0]);
const flatEnd = curveOf([0, 40], [0.002, 20], [0.004, 0.5], [0.006, 0]);
const dipping = curveOf(
  [0, 50],
  [0.001, 36],
  [0.002, 18],
  [0.0023, 30],
  [0.003, 29],
  [0.004, 17],
  [0.005, 0],
);

const standing = { loss: 8, area_m2: 1.3e-3 };
const member = (curve: FanCurve, rest: Partial<FanMember> = {}): FanMember => ({
  curve,
  speedRatio: 1,
  sideBySide: 1,
  inARow: 1,
  place: 'first',
  standing,
  ...rest,
});
const beside = { place: 'beside' } as const;
const behind = { place: 'behind' } as const;

const out = new Float64Array(2);

function pressure(members: readonly FanMember[], flow_m3PerS: number, rho_kgPerM3 = 1.2) {
  fanPressure(prepareFanGroup(members).curve, flow_m3PerS, 1, rho_kgPerM3, out);
  return [...out] as [dp_Pa: number, perFlow: number];
}

function single(flow_m3PerS: number, speedRatio = 0.9, rho_kgPerM3 = 1.1) {
  fanPressure(strong, flow_m3PerS, speedRatio, rho_kgPerM3, out);
  return [...out] as [dp_Pa: number, perFlow: number];
}

/** One lane's flow at a pressure, by its definition: the curve, and straight lines at its ends. The curve must only fall. */
function flowAt(
  { curve, speedRatio: n, sideBySide, inARow, standing: { loss, area_m2 } }: FanMember,
  dp: number,
) {
  const each = dp / inARow;
  if (n === 0) return -Math.sign(each) * sideBySide * area_m2 * Math.sqrt(Math.abs(each) / (0.6 * loss));
  if (each > n * n * curve.shutOff_Pa) {
    const steep = Math.max(curve.shutOff_Pa / curve.freeFlow_m3PerS, -(curve.curve.slope[0] as number));
    return (sideBySide * (n * n * curve.shutOff_Pa - each)) / (n * steep);
  }
  const found = brentRoot(
    (q) => {
      fanPressure(curve, q, n, 1.2, out);
      return (out[0] as number) - each;
    },
    0,
    3 * n * curve.freeFlow_m3PerS,
    1e-15,
  );
  if (!found.ok) throw new Error(found.reason);
  return sideBySide * found.root;
}

describe('prepareFanGroup of one kind', () => {
  test('is that fan where there is one, at its speed', () => {
    const [dp, perFlow] = pressure([member(strong, { speedRatio: 0.9 })], 0.003, 1.1);
    expect(dp).toBeCloseTo(single(0.003)[0], 12);
    expect(perFlow / single(0.003)[1]).toBeCloseTo(1, 12);
  });

  test('is the very curve of one fan at rated speed', () => {
    expect(prepareFanGroup([member(dipping)]).curve).toEqual(dipping);
  });

  test('side by side: each carries its share', () => {
    const three = [member(strong, { speedRatio: 0.9, sideBySide: 3 })];
    expect(pressure(three, 0.009, 1.1)[0]).toBeCloseTo(single(0.003)[0], 12);
  });

  test('in a row: pressures add', () => {
    const two = [member(strong, { speedRatio: 0.9, inARow: 2 })];
    expect(pressure(two, 0.003, 1.1)[0]).toBeCloseTo(2 * single(0.003)[0], 12);
  });

  test('two rows of three: derivative by the common flow', () => {
    const grid = [member(strong, { speedRatio: 0.9, sideBySide: 3, inARow: 2 })];
    const h = 1e-7;
    const difference = (pressure(grid, 0.01 + h)[0] - pressure(grid, 0.01 - h)[0]) / (2 * h);
    expect(pressure(grid, 0.01)[1] / difference).toBeCloseTo(1, 5);
  });

  test('keeps a dip, scaled, and bridges nothing', () => {
    const { curve, bridgedDip } = prepareFanGroup([
      member(dipping, { speedRatio: 0.8, sideBySide: 2, inARow: 3 }),
    ]);
    expect(bridgedDip).toBe(false);
    expect(curve.curve.x).toHaveLength(dipping.curve.x.length);
    expect(curve.isNonIncreasing).toBe(false);
    expect(curve.stallBelow_m3PerS).toBeCloseTo(0.0023 * 1.6, 15);
    expect(curve.shutOff_Pa).toBeCloseTo(50 * 0.64 * 3, 12);
    expect(curve.freeFlow_m3PerS).toBeCloseTo(0.005 * 1.6, 15);
  });

  test('shares: flow of a lane and pressure of one fan', () => {
    const group = prepareFanGroup([member(strong, { speedRatio: 0.9, sideBySide: 3, inARow: 2 })]);
    const [share] = group.shares(0.009, 1.1);
    expect(share?.flow_m3PerS).toBeCloseTo(0.003, 15);
    expect(share?.dp_Pa).toBeCloseTo(single(0.003)[0], 12);
    expect(share?.backwards).toBe(false);
  });
});

describe('prepareFanGroup of kinds side by side', () => {
  const groups: [name: string, members: FanMember[]][] = [
    ['strong and weak', [member(strong), member(weak, beside)]],
    ['one that ends flat', [member(strong), member(flatEnd, beside)]],
    ['speeds that differ', [member(strong), member(strong, { ...beside, speedRatio: 0.55 })]],
    [
      'lanes and rows',
      [member(weak, { sideBySide: 2, inARow: 3 }), member(strong, { ...beside, sideBySide: 4 })],
    ],
    ['a hole', [member(strong), member(weak, { ...beside, speedRatio: 0 })]],
    ['a hole first', [member(weak, { speedRatio: 0 }), member(flatEnd, beside), member(strong, beside)]],
    [
      'four',
      [
        member(weak),
        member(strong, beside),
        member(flatEnd, beside),
        member(weak, { ...beside, speedRatio: 0.4 }),
      ],
    ],
  ];

  test.each(groups)('has its pressures within a ten-thousandth of shut-off: %s', (_, members) => {
    const { curve } = prepareFanGroup(members);
    for (let i = 0; i <= 400; i++) {
      const dp = (curve.shutOff_Pa * i) / 400;
      const flow = members.reduce((sum, own) => sum + flowAt(own, dp), 0);
      evaluatePchip(curve.curve, flow, out);
      expect(Math.abs((out[0] as number) - dp) / curve.shutOff_Pa).toBeLessThan(1e-4);
    }
  });

  test.each(groups)('shares add up at one pressure, which is that of the joined curve: %s', (_, members) => {
    const group = prepareFanGroup(members);
    for (const part of [0.01, 0.3, 0.5, 0.77, 0.99]) {
      const flow = part * group.curve.freeFlow_m3PerS;
      const shares = group.shares(flow, 0.9);
      const sum = shares.reduce(
        (all, { flow_m3PerS }, i) => all + flow_m3PerS * (members[i]?.sideBySide ?? 0),
        0,
      );
      expect(sum / flow).toBeCloseTo(1, 12);
      fanPressure(group.curve, flow, 1, 0.9, out);
      shares.forEach(({ dp_Pa }, i) => {
        const lane_Pa = dp_Pa * (members[i]?.inARow ?? 0);
        expect(Math.abs(lane_Pa - (out[0] as number)) / group.curve.shutOff_Pa).toBeLessThan(1e-4);
      });
    }
  });

  test.each(groups)('begins at rest, ends without pressure and only falls: %s', (_, members) => {
    const { curve } = prepareFanGroup(members);
    expect(curve.curve.x[0]).toBe(0);
    expect(curve.curve.y.at(-1)).toBe(0);
    expect(curve.isNonIncreasing).toBe(true);
    const free = members.reduce((sum, m) => sum + m.curve.freeFlow_m3PerS * m.speedRatio * m.sideBySide, 0);
    // Where a curve ends level, the bend beyond its end is a bow a millionth of the flow wide.
    expect(curve.freeFlow_m3PerS / free).toBeCloseTo(1, 4);
  });

  test('a weak fan runs backwards above its shut-off pressure, and forwards below it', () => {
    const group = prepareFanGroup([member(strong), member(weak, beside)]);
    const closed = group.shares(0.002, 1.2);
    expect(closed[0]?.dp_Pa).toBeGreaterThan(12);
    expect(closed.map(({ backwards }) => backwards)).toEqual([false, true]);
    expect(closed[1]?.flow_m3PerS).toBeLessThan(0);
    const open = group.shares(0.011, 1.2);
    expect(open[0]?.dp_Pa).toBeLessThan(12);
    expect(open.map(({ backwards }) => backwards)).toEqual([false, false]);
  });

  test('against a closed box feeds back what it moves: less pressure than the strong one alone', () => {
    const group = prepareFanGroup([member(strong), member(weak, beside)]);
    expect(group.curve.shutOff_Pa).toBeLessThan(strong.shutOff_Pa);
    expect(group.curve.shutOff_Pa).toBeGreaterThan(weak.shutOff_Pa);
    const [one, other] = group.shares(0, 1.2);
    expect((one?.flow_m3PerS ?? 0) + (other?.flow_m3PerS ?? 0)).toBeCloseTo(0, 14);
  });

  test('air runs back through one that stands still by its velocity heads', () => {
    const [, hole] = prepareFanGroup([member(strong), member(weak, { ...beside, speedRatio: 0 })]).shares(
      0.006,
      1.1,
    );
    const velocity = (hole?.flow_m3PerS ?? 0) / standing.area_m2;
    expect(hole?.backwards).toBe(true);
    expect(0.5 * 1.1 * 8 * velocity * velocity).toBeCloseTo(hole?.dp_Pa ?? 0, 8);
  });

  test('bridges a dip and says so, giving the most flow at each pressure', () => {
    const { curve, bridgedDip } = prepareFanGroup([member(dipping), member(weak, beside)]);
    expect(bridgedDip).toBe(true);
    expect(curve.isNonIncreasing).toBe(true);
    // At 20 Pa the dipping fan has three flows; by far the most is on its way down from 29 to 17 Pa.
    const found = brentRoot((q) => single20(q), 0.003, 0.004, 1e-15);
    const dip = found.ok ? found.root : Number.NaN;
    evaluatePchip(curve.curve, dip + flowAt(member(weak), 20), out);
    expect(Math.abs((out[0] as number) - 20) / curve.shutOff_Pa).toBeLessThan(1e-4);
  });

  function single20(flow: number) {
    fanPressure(dipping, flow, 1, 1.2, out);
    return (out[0] as number) - 20;
  }
});

describe('prepareFanGroup of kinds behind one another', () => {
  const groups: [name: string, members: FanMember[]][] = [
    ['weak behind strong', [member(strong), member(weak, behind)]],
    ['strong behind weak, slower', [member(weak), member(strong, { ...behind, speedRatio: 0.7 })]],
    ['a dip behind two lanes', [member(weak, { sideBySide: 2 }), member(dipping, behind)]],
    ['one that stands still behind', [member(strong), member(weak, { ...behind, speedRatio: 0 })]],
    ['one that stands still before', [member(weak, { speedRatio: 0 }), member(strong, behind)]],
  ];

  test.each(groups)('adds the pressures exactly: %s', (_, members) => {
    const { curve } = prepareFanGroup(members);
    for (let i = 0; i <= 300; i++) {
      const flow = (curve.freeFlow_m3PerS * i) / 300;
      const sum = members.reduce((all, { curve: own, speedRatio: n, sideBySide, inARow }) => {
        if (n === 0) return all - 0.6 * 8 * (flow / (sideBySide * standing.area_m2)) ** 2 * inARow;
        fanPressure(own, flow / sideBySide, n, 1.2, out);
        return all + inARow * (out[0] as number);
      }, 0);
      evaluatePchip(curve.curve, flow, out);
      expect(Math.abs((out[0] as number) - sum) / curve.shutOff_Pa).toBeLessThan(1e-12);
    }
    expect(curve.curve.y.at(-1)).toBe(0);
  });

  test.each(groups)('passes all of the air through each and shares the pressure: %s', (_, members) => {
    const group = prepareFanGroup(members);
    const flow = 0.6 * group.curve.freeFlow_m3PerS;
    fanPressure(group.curve, flow, 1, 1.05, out);
    const shares = group.shares(flow, 1.05);
    shares.forEach(({ flow_m3PerS }, i) => {
      expect(flow_m3PerS * (members[i]?.sideBySide ?? 0)).toBeCloseTo(flow, 15);
    });
    const sum = shares.reduce((all, { dp_Pa }, i) => all + dp_Pa * (members[i]?.inARow ?? 0), 0);
    expect(sum).toBeCloseTo(out[0] as number, 10);
  });

  test('a weak one is in the way of a flow beyond its free delivery', () => {
    const [, slow] = prepareFanGroup([member(strong), member(weak, behind)]).shares(0.005, 1.2);
    expect(slow?.dp_Pa).toBeLessThan(0);
    expect(slow?.backwards).toBe(false);
  });

  test('points of the sum stand where it turns, so that it is monotone between them', () => {
    const { curve } = prepareFanGroup([member(strong), member(dipping, behind)]);
    const { x } = curve.curve;
    expect(curve.stallBelow_m3PerS).not.toBeNull();
    for (let i = 1; i < x.length; i++) {
      const signs = new Set<number>();
      for (let k = 1; k < 20; k++) {
        evaluatePchip(
          curve.curve,
          (x[i - 1] as number) + (((x[i] as number) - (x[i - 1] as number)) * k) / 20,
          out,
        );
        if (Math.abs(out[1] as number) > 1e-6) signs.add(Math.sign(out[1] as number));
      }
      expect(signs.size).toBeLessThanOrEqual(1);
    }
  });

  test('all beside come first, whatever the order given', () => {
    const one = prepareFanGroup([member(weak), member(strong, behind), member(flatEnd, beside)]);
    const other = prepareFanGroup([member(weak), member(flatEnd, beside), member(strong, behind)]);
    expect(one.curve).toEqual(other.curve);
    const [first, back, side] = one.shares(0.004, 1.2);
    const [sameFirst, sameSide, sameBack] = other.shares(0.004, 1.2);
    expect([first, side, back]).toEqual([sameFirst, sameSide, sameBack]);
  });

  test('fans beside that a fan behind pulls beyond their free delivery brake it at one pressure', () => {
    const members = [member(weak), member(weak, { ...beside, speedRatio: 0 }), member(strong, behind)];
    const group = prepareFanGroup(members);
    const flow = 0.95 * group.curve.freeFlow_m3PerS;
    const [turning, still, back] = group.shares(flow, 1.2);
    expect(turning?.dp_Pa).toBeLessThan(0);
    expect(still?.dp_Pa).toBe(turning?.dp_Pa);
    expect(still?.flow_m3PerS).toBeGreaterThan(0);
    evaluatePchip(group.curve.curve, flow, out);
    const sum = (turning?.dp_Pa ?? 0) + (back?.dp_Pa ?? 0);
    expect(Math.abs(sum - (out[0] as number)) / group.curve.shutOff_Pa).toBeLessThan(1e-4);
  });
});
