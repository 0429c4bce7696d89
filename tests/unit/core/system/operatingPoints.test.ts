import { describe, expect, test } from 'vitest';
import { ordinaryRun } from '../../../../src/core/system/input.ts';
import {
  bracketedFlow_m3PerS,
  fanPressureAt,
  freeFlow_m3PerS,
  stallBelow_m3PerS,
  systemPressure,
} from '../../../../src/core/system/operatingPoints.ts';
import { settle } from '../../../../src/core/system/settle.ts';
import { trustOf } from '../../../../src/core/system/trust.ts';
import { prepareWork, spreadAir } from '../../../../src/core/system/work.ts';
import { sampleInput } from '../../../helpers/sampleInput.ts';
import { dippingFan, solved, withFan } from '../../../helpers/solved.ts';

function settledWork(input = sampleInput(), start_kgPerS = 0.005) {
  const work = prepareWork(input, ordinaryRun);
  spreadAir(work);
  expect(settle(work, start_kgPerS)).toBeNull();
  return work;
}

describe('the fan as it runs', () => {
  test('scales with volts: half of them are half the flow and a quarter of the pressure', () => {
    const base = sampleInput();
    const full = prepareWork(base, ordinaryRun);
    const half = prepareWork({ ...base, fan: { ...base.fan, supply_V: 6 } }, ordinaryRun);
    expect(freeFlow_m3PerS(half)).toBeCloseTo(freeFlow_m3PerS(full) / 2, 12);
    expect(fanPressureAt(half, 0.002)).toBeCloseTo(fanPressureAt(full, 0.004) / 4, 10);
  });

  test('has a stall only where its curve has a dip', () => {
    expect(stallBelow_m3PerS(prepareWork(sampleInput(), ordinaryRun))).toBeNull();
    expect(stallBelow_m3PerS(prepareWork(withFan(sampleInput(), dippingFan), ordinaryRun))).toBeCloseTo(
      20.7 / 3600,
      12,
    );
  });
});

describe('the box as it is', () => {
  test('takes at the flow of the answer just what the fan has there, and more for more', () => {
    const work = settledWork();
    const { flow_m3PerS, fanPressure_Pa } = solved(sampleInput()).air;
    const system = systemPressure(work);
    expect(Math.abs(system(flow_m3PerS) / fanPressure_Pa - 1)).toBeLessThan(1e-7);
    let before = 0;
    for (let i = 1; i <= 20; i++) {
      const dp = system((flow_m3PerS * i) / 10);
      expect(dp).toBeGreaterThan(before);
      before = dp;
    }
  });

  test('has the same flow by bracketing as by Newton', () => {
    const work = settledWork();
    const { flow_m3PerS } = solved(sampleInput()).air;
    expect(Math.abs((bracketedFlow_m3PerS(work) ?? 0) / flow_m3PerS - 1)).toBeLessThan(1e-8);
  });
});

describe('a fan with a dip', () => {
  const input = withFan(sampleInput(), dippingFan);
  const { air, limits } = solved(input);

  test('may meet the box three times: stable, not stable, stable, and the last is used', () => {
    expect(air.intersections.map(({ stable, used }) => [stable, used])).toEqual([
      [true, false],
      [false, false],
      [true, true],
    ]);
    expect(air.flow_m3PerS).toBeCloseTo(air.intersections[2]?.flow_m3PerS ?? 0, 9);
  });

  test('puts each intersection on the fan’s curve and on the box’s', () => {
    const work = settledWork(withFan(sampleInput(), dippingFan), air.massFlow_kgPerS);
    const system = systemPressure(work);
    for (const { flow_m3PerS, dp_Pa } of air.intersections) {
      expect(fanPressureAt(work, flow_m3PerS)).toBeCloseTo(dp_Pa, 6);
      expect(Math.abs(system(flow_m3PerS) / dp_Pa - 1)).toBeLessThan(1e-5); // the air of the settled box, not of each point
    }
  });

  test('is told: a note, and little to spare', () => {
    expect(trustOf(input).notes.map(({ code }) => code)).toContain('severalPoints');
    expect(limits.find(({ key }) => key === 'stall')?.state).toBe('little');
  });
});
