import { describe, expect, test } from 'vitest';
import { selfHeatingDrift } from '../../../../src/core/resistor/selfHeating.ts';
import { driftOf } from '../../../../src/core/system/drift.ts';
import type { PartInput, SystemInput } from '../../../../src/core/system/input.ts';
import { sampleInput, samplePart } from '../../../helpers/sampleInput.ts';
import { solved } from '../../../helpers/solved.ts';

const inSeries = (parts: readonly PartInput[], settled = 10e-6): SystemInput => {
  const base = sampleInput(parts.length);
  return {
    ...base,
    load: { ...base.load, excitation: 'seriesAmps', supply: 0.5 },
    positions: base.positions.map((p, r) => ({ ...p, part: parts[r] as PartInput })),
    limits: { ...base.limits, settled },
  };
};
const must = <T>(value: T | null): T => {
  if (value === null) throw new Error('there is an answer');
  return value;
};

describe('drift by self-heating', () => {
  test('of every position is its coefficient at the settled film', () => {
    const input = inSeries([samplePart, { ...samplePart, tcr_perK: -50e-6, tcr2_perK2: 2e-8 }, samplePart]);
    const { each } = must(driftOf(input));
    solved(input).heat.positions.forEach(({ film_K }, r) => {
      const { tcr_perK, tcr2_perK2 } = input.positions[r]?.part ?? samplePart;
      const expected = selfHeatingDrift(input.room.T_K, film_K, tcr_perK, tcr2_perK2);
      expect(Math.abs((each[r] ?? 0) - expected)).toBeLessThan(2e-6); // the warm-up ends within a few hundredths of a kelvin
    });
  });

  test('of a string is the mean of equal ones, weighted by resistance', () => {
    const big = { ...samplePart, R_Ohm: 90, tcr_perK: 0 };
    const { whole, each } = must(driftOf(inSeries([samplePart, big])));
    expect(each[1]).toBe(0);
    expect(whole).toBeCloseTo((each[0] ?? 0) / 10, 9);
  });

  test('a set side by side follows its conductances, separate loads are no set', () => {
    const input = inSeries([samplePart, samplePart]);
    const parallel: SystemInput = {
      ...input,
      load: { ...input.load, excitation: 'parallelVolts', supply: 5 },
    };
    const { whole, each } = must(driftOf(parallel));
    expect(whole).toBeCloseTo(((each[0] ?? 0) + (each[1] ?? 0)) / 2, 8);
    expect(must(driftOf(sampleInput(2))).whole).toBeNull();
  });

  test('takes longer to settle the closer it is asked for, and no time without a coefficient', () => {
    const loose = must(driftOf(inSeries([samplePart, samplePart], 100e-6)));
    const close = must(driftOf(inSeries([samplePart, samplePart], 5e-6)));
    expect(close.wholeSettled_s ?? 0).toBeGreaterThan(loose.wholeSettled_s ?? 0);
    const still = must(driftOf(inSeries([{ ...samplePart, tcr_perK: 0 }])));
    expect(still.each[0]).toBe(0);
    expect(still.eachSettled_s[0]).toBe(0);
  });
});
