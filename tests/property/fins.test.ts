import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { finBetweenPlates } from '../../src/core/fins/finBetweenPlates.ts';
import { finEfficiency } from '../../src/core/fins/finEfficiency.ts';
import { isothermalSinkResistance_KPerW } from '../../src/core/fins/isothermalSinkResistance_KPerW.ts';
import { overallEfficiency } from '../../src/core/fins/overallEfficiency.ts';
import { sinkAirConductance_WPerK } from '../../src/core/fins/sinkAirConductance_WPerK.ts';

const runs = { seed: 20261125, numRuns: 300 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const fin = fc.record({
  h: between(0.1, 500),
  k: between(1, 400),
  thickness_m: between(2e-4, 5e-3),
  height_m: between(1e-4, 0.1),
});

function conductances(
  { h, k, thickness_m, height_m }: { h: number; k: number; thickness_m: number; height_m: number },
  bothEnds: boolean,
) {
  const out = new Float64Array(2);
  finBetweenPlates(out, h, k, thickness_m, height_m, 0.05, bothEnds);
  return [out[0] as number, out[1] as number] as const;
}

describe('laws of fins', () => {
  test('between two equally hot plates a fin is two half fins with nothing crossing the middle', () => {
    fc.assert(
      fc.property(fin, (given) => {
        const [toAir] = conductances(given, true);
        const [half] = conductances({ ...given, height_m: given.height_m / 2 }, false);
        expect(Math.abs(toAir / half - 1)).toBeLessThan(1e-12);
      }),
      runs,
    );
  });

  test('between a hot and a free plate it is the whole fin with an open tip', () => {
    fc.assert(
      fc.property(fin, (given) => {
        const [toAir, across] = conductances(given, true);
        const [open] = conductances(given, false);
        // The far plate takes what crosses and gives it to the air at its own end.
        const throughFar = across > 0 ? 1 / (1 / across + 1 / toAir) : 0;
        expect(Math.abs((toAir + throughFar) / open - 1)).toBeLessThan(1e-9);
      }),
      runs,
    );
  });

  test('efficiency is the heat over that of a fin as hot as its root, between nothing and one', () => {
    fc.assert(
      fc.property(fin, (given) => {
        const { h, k, thickness_m, height_m } = given;
        const efficiency = finEfficiency(h, k, thickness_m, height_m);
        const [open] = conductances(given, false);
        expect(Math.abs(open / (2 * h * height_m * 0.05) / efficiency - 1)).toBeLessThan(1e-9);
        expect(efficiency).toBeGreaterThan(0);
        expect(efficiency).toBeLessThanOrEqual(1);
      }),
      runs,
    );
  });

  test('a better cooled, thinner or poorer conducting fin is never more efficient', () => {
    fc.assert(
      fc.property(fin, between(1.01, 5), ({ h, k, thickness_m, height_m }, factor) => {
        const efficiency = finEfficiency(h, k, thickness_m, height_m) + 1e-15;
        expect(finEfficiency(h * factor, k, thickness_m, height_m)).toBeLessThanOrEqual(efficiency);
        expect(finEfficiency(h, k / factor, thickness_m, height_m)).toBeLessThanOrEqual(efficiency);
        expect(finEfficiency(h, k, thickness_m / factor, height_m)).toBeLessThanOrEqual(efficiency);
        expect(finEfficiency(h, k, thickness_m, height_m * factor)).toBeLessThanOrEqual(efficiency);
      }),
      runs,
    );
  });

  test('a whole surface lies between its fins and its bare stretches', () => {
    fc.assert(
      fc.property(between(0, 1), between(0.01, 1), (share, efficiency) => {
        const whole = overallEfficiency(share, 1, efficiency);
        expect(whole).toBeGreaterThanOrEqual(efficiency - 1e-15);
        expect(whole).toBeLessThanOrEqual(1);
      }),
      runs,
    );
  });
});

describe('warming of the air along a sink', () => {
  const UA = between(1e-4, 100);
  const capacity = between(1e-3, 50);

  test('by way of the mean air gives just the heat of a sink at one temperature', () => {
    fc.assert(
      fc.property(UA, capacity, (UA_WPerK, capacity_WPerK) => {
        const series = 1 / UA_WPerK + 1 / sinkAirConductance_WPerK(UA_WPerK, capacity_WPerK);
        expect(Math.abs(series / isothermalSinkResistance_KPerW(UA_WPerK, capacity_WPerK) - 1)).toBeLessThan(
          1e-9,
        );
      }),
      runs,
    );
  });

  test('lies between once and twice the stream’s capacity', () => {
    fc.assert(
      fc.property(UA, capacity, (UA_WPerK, capacity_WPerK) => {
        const ratio = sinkAirConductance_WPerK(UA_WPerK, capacity_WPerK) / capacity_WPerK;
        expect(ratio).toBeGreaterThanOrEqual(1 - 1e-12);
        expect(ratio).toBeLessThanOrEqual(2 + 1e-12);
      }),
      runs,
    );
  });

  test('more air or more surface never makes a sink worse', () => {
    fc.assert(
      fc.property(UA, capacity, between(1.01, 4), (UA_WPerK, capacity_WPerK, factor) => {
        const R = isothermalSinkResistance_KPerW(UA_WPerK, capacity_WPerK) * (1 + 1e-12);
        expect(isothermalSinkResistance_KPerW(UA_WPerK, capacity_WPerK * factor)).toBeLessThanOrEqual(R);
        expect(isothermalSinkResistance_KPerW(UA_WPerK * factor, capacity_WPerK)).toBeLessThanOrEqual(R);
      }),
      runs,
    );
  });
});
