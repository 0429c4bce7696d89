import { describe, expect, test } from 'vitest';
import { linkDrop } from '../../../../src/core/airflow/linkLaw.ts';
import {
  boxFans,
  fanLaw,
  fanPower_W,
  obstruction,
  runningFans,
  soundSources,
  standingFans,
} from '../../../../src/core/system/fans.ts';
import type { OtherFanInput, SystemInput } from '../../../../src/core/system/input.ts';
import { sampleInput } from '../../../helpers/sampleInput.ts';

const base = sampleInput();
const other = (over: Partial<OtherFanInput> = {}): OtherFanInput => ({
  ...base.fan,
  name: 'other',
  place: 'beside',
  ...over,
});
const withFan = (over: Partial<SystemInput['fan']>, input = base): SystemInput => ({
  ...input,
  fan: { ...input.fan, ...over },
});
const worst = { ...base, load: { ...base.load, atWorst: true } };

/** Pressure drop of a flow through fans that stand still, and ½ρ(Q/A)²·K of one way, by hand. */
function standingDrop(input: SystemInput, flow_m3PerS: number): number {
  const out = new Float64Array(2);
  linkDrop(out, standingFans(input), flow_m3PerS * 1.2, 1.2, 0);
  return out[0] as number;
}
const ring_m2 = (Math.PI / 4) * (57e-3 ** 2 - 26e-3 ** 2);
const one = (flow: number, loss = 8, area_m2 = ring_m2) => 0.5 * 1.2 * loss * (flow / area_m2) ** 2;

describe('the fans of a box', () => {
  test('stand in their order, each at its own speed', () => {
    const fans = boxFans(
      withFan({
        sideBySide: 2,
        inARow: 3,
        others: [other({ supply_V: 6 }), other({ supply_V: 4, place: 'behind' })],
      }),
    );
    expect(fans.map(({ place, sideBySide, inARow }) => [place, sideBySide, inARow])).toEqual([
      ['first', 2, 3],
      ['beside', 1, 1],
      ['behind', 1, 1],
    ]);
    expect(fans.map(({ speedRatio }) => speedRatio)).toEqual([1, 0.5, 0]);
  });

  test('feel a sagging supply only where the load is judged at its worst, age always', () => {
    const speed = (input: SystemInput) => boxFans(input)[0]?.speedRatio;
    expect(speed(withFan({ supplySag: 0.1 }))).toBe(1);
    expect(speed(withFan({ supplySag: 0.1 }, worst))).toBeCloseTo(0.9, 12);
    expect(speed(withFan({ speedLoss: 0.2 }))).toBeCloseTo(0.8, 12);
    expect(speed(withFan({ speedLoss: 0.2, supplySag: 0.1 }, worst))).toBeCloseTo(0.72, 12);
    expect(speed(withFan({ supplySag: 0.6 }, worst))).toBe(0); // 4.8 V of a 5 V start
  });

  test('take watts as the cube of their speed, every one of them', () => {
    expect(fanPower_W(base)).toBeCloseTo(2.4, 12);
    expect(fanPower_W(withFan({ supply_V: 6, sideBySide: 2, inARow: 2 }))).toBeCloseTo((4 * 2.4) / 8, 12);
    expect(fanPower_W(withFan({ others: [other({ power_W: 1 }), other({ supply_V: 0 })] }))).toBeCloseTo(
      3.4,
      12,
    );
  });

  test('are heard as often as there are of them', () => {
    const sources = soundSources(
      withFan({ sideBySide: 2, inARow: 2, others: [other({ sound_dBA: 20, supply_V: 6 })] }),
    );
    expect(sources.map(({ count, sound_dBA, speedRatio }) => [count, sound_dBA, speedRatio])).toEqual([
      [4, 32, 1],
      [1, 20, 0.5],
    ]);
  });

  test('are in the way of themselves by the nearer of the two walls', () => {
    expect(obstruction(withFan({ inletSpace_m: 0.2, outletSpace_m: 0.2 }))).toBe(0);
    const near = obstruction(withFan({ inletSpace_m: 0.01, outletSpace_m: 0.2 }));
    expect(near).toBeGreaterThan(0);
    expect(obstruction(withFan({ inletSpace_m: 0.2, outletSpace_m: 0.01 }))).toBe(near);
  });
});

describe('running fans', () => {
  test('are none where none of them turns, and are some where one does', () => {
    expect(runningFans(withFan({ supply_V: 4 }))).toBeNull();
    expect(runningFans(withFan({ supply_V: 4, others: [other({ supply_V: 4.9 })] }))).toBeNull();
    expect(runningFans(withFan({ supply_V: 4, others: [other()] }))).not.toBeNull();
  });

  test('of one kind have its points: flows by the lanes, pressures by the row', () => {
    const [single, many] = [runningFans(base), runningFans(withFan({ sideBySide: 3, inARow: 2 }))];
    expect(many?.curve.shutOff_Pa).toBeCloseTo(2 * (single?.curve.shutOff_Pa ?? 0), 12);
    expect(many?.curve.freeFlow_m3PerS).toBeCloseTo(3 * (single?.curve.freeFlow_m3PerS ?? 0), 15);
  });

  test('beside one that stands still lose air through it, ever less as that grows tight', () => {
    const free = (standingLoss: number) =>
      runningFans(withFan({ others: [other({ supply_V: 0, standingLoss })] }))?.curve.shutOff_Pa ?? 0;
    const alone = runningFans(base)?.curve.shutOff_Pa ?? 0;
    expect(free(1)).toBeLessThan(free(20));
    expect(free(20)).toBeLessThan(free(1e4));
    expect(free(1e4)).toBeLessThan(alone);
    expect(free(1e8) / alone).toBeGreaterThan(0.999);
  });

  test('carry the factor on their flow in the law of their link', () => {
    const group = runningFans(base);
    if (!group) throw new Error('it runs');
    const drop = (flowFactor: number, flow: number) => {
      const out = new Float64Array(2);
      linkDrop(out, fanLaw(group, flowFactor), flow * 1.2, 1.2, 1.8e-5);
      return out[0] as number;
    };
    expect(drop(1.1, 0.0055)).toBeCloseTo(drop(1, 0.005), 10);
    expect(drop(1, 0.005)).toBeLessThan(0);
  });
});

describe('fans that stand still', () => {
  const flow = 2e-3;

  test('take the velocity heads of the ring between hub and rim', () => {
    expect(standingDrop(base, flow)).toBeCloseTo(one(flow), 10);
    expect(standingDrop(base, -flow)).toBeCloseTo(-one(flow), 10);
  });

  test('side by side share the flow, behind one another add up', () => {
    expect(standingDrop(withFan({ sideBySide: 3 }), flow)).toBeCloseTo(one(flow / 3), 10);
    expect(standingDrop(withFan({ inARow: 2 }), flow)).toBeCloseTo(2 * one(flow), 10);
    expect(standingDrop(withFan({ sideBySide: 2, inARow: 3 }), flow)).toBeCloseTo(3 * one(flow / 2), 10);
  });

  test('of other kinds let through what one pressure lets through, and add what one flow takes', () => {
    const small = { opening_m: 40e-3, hub_m: 20e-3, standingLoss: 20 };
    const area_m2 = (Math.PI / 4) * (40e-3 ** 2 - 20e-3 ** 2);
    const beside = standingDrop(withFan({ others: [other(small)] }), flow);
    const through = (loss: number, area: number) => area * Math.sqrt((2 * beside) / (1.2 * loss));
    expect(through(8, ring_m2) + through(20, area_m2)).toBeCloseTo(flow, 12);
    const behind = standingDrop(withFan({ others: [other({ ...small, place: 'behind' })] }), flow);
    expect(behind).toBeCloseTo(one(flow) + one(flow, 20, area_m2), 9);
  });

  test('take the factor on their loss, and none at all is not infinitely wide', () => {
    const doubled = { ...base, factors: { ...base.factors, standingFan: 2 } };
    expect(standingDrop(doubled, flow)).toBeCloseTo(2 * one(flow), 10);
    expect(standingDrop(withFan({ standingLoss: 0 }), flow)).toBeGreaterThan(0);
  });
});
