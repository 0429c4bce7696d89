import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { finBetweenPlates } from '../../src/core/fins/finBetweenPlates.ts';
import { finEfficiency } from '../../src/core/fins/finEfficiency.ts';
import { isothermalSinkResistance_KPerW } from '../../src/core/fins/isothermalSinkResistance_KPerW.ts';
import { sinkAirConductance_WPerK } from '../../src/core/fins/sinkAirConductance_WPerK.ts';

const runs = { seed: 20261125, numRuns: 300 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** Even over the decades from 10^low to 10^high. */
const decades = (low: number, high: number) => between(low, high).map((log) => 10 ** log);

const fin = fc.record({
  h: decades(-3, 5),
  k: decades(-1, 3),
  t: decades(-4, -1.7),
  H: decades(-3, 0),
  L: decades(-3, 0),
});

describe('laws of fins', () => {
  test('efficiency lies between nothing and the whole, and falls with height and with heat transfer', () => {
    fc.assert(
      fc.property(fin, ({ h, k, t, H }) => {
        const efficiency = finEfficiency(h, k, t, H);
        expect(efficiency).toBeGreaterThan(0);
        expect(efficiency).toBeLessThanOrEqual(1);
        expect(finEfficiency(h, k, t, 1.2 * H)).toBeLessThanOrEqual(efficiency);
        expect(finEfficiency(1.2 * h, k, t, H)).toBeLessThanOrEqual(efficiency);
        expect(finEfficiency(h, 1.2 * k, t, H)).toBeGreaterThanOrEqual(efficiency);
      }),
      runs,
    );
  });

  test('a higher fin never gives less heat', () => {
    fc.assert(
      fc.property(fin, ({ h, k, t, H }) => {
        const heat = (height: number) => height * finEfficiency(h, k, t, height);
        expect(heat(1.1 * H)).toBeGreaterThanOrEqual(heat(H) * (1 - 1e-12));
      }),
      runs,
    );
  });

  test('between plates: finite, and one end cold never gives the air more than both ends hot', () => {
    const out = new Float64Array(2);
    fc.assert(
      fc.property(fin, ({ h, k, t, H, L }) => {
        finBetweenPlates(out, h, k, t, H, L, true);
        const [air, across] = [out[0] as number, out[1] as number];
        expect(air).toBeGreaterThan(0);
        expect(across).toBeGreaterThanOrEqual(0);
        expect(Number.isFinite(air) && Number.isFinite(across)).toBe(true);
        // No more than half of both faces at plate temperature, no more across than a bare bar.
        expect(air).toBeLessThanOrEqual(h * H * L * (1 + 1e-12));
        expect(across).toBeLessThanOrEqual(((k * t * L) / H) * (1 + 1e-9));
      }),
      runs,
    );
  });

  test('between plates: what one hot plate gives is the fin with a cold end, k·t·L·m/tanh(mH)', () => {
    const out = new Float64Array(2);
    fc.assert(
      fc.property(fin, ({ h, k, t, H, L }) => {
        const m = Math.sqrt((2 * h) / (k * t));
        fc.pre(m * H > 1e-4);
        finBetweenPlates(out, h, k, t, H, L, true);
        const given = (out[0] as number) + (out[1] as number);
        expect(given / ((k * t * L * m) / Math.tanh(m * H))).toBeCloseTo(1, 9);
      }),
      runs,
    );
  });
});

describe('laws of sinks', () => {
  const sink = fc.tuple(decades(-6, 4), decades(-6, 4));

  test('plate to mean air and on to the entering air is the whole sink', () => {
    fc.assert(
      fc.property(sink, ([UA, capacity]) => {
        const series = 1 / UA + 1 / sinkAirConductance_WPerK(UA, capacity);
        expect(series / isothermalSinkResistance_KPerW(UA, capacity)).toBeCloseTo(1, 9);
      }),
      runs,
    );
  });

  test('the conductance of the warming air lies between once and twice ṁc_p', () => {
    fc.assert(
      fc.property(sink, ([UA, capacity]) => {
        const carried = sinkAirConductance_WPerK(UA, capacity) / capacity;
        expect(carried).toBeGreaterThanOrEqual(1);
        expect(carried).toBeLessThanOrEqual(2);
      }),
      runs,
    );
  });

  test('more air or more surface never make a sink worse', () => {
    fc.assert(
      fc.property(sink, between(1.001, 10), ([UA, capacity], more) => {
        const R = isothermalSinkResistance_KPerW(UA, capacity);
        expect(isothermalSinkResistance_KPerW(UA * more, capacity)).toBeLessThanOrEqual(R * (1 + 1e-12));
        expect(isothermalSinkResistance_KPerW(UA, capacity * more)).toBeLessThanOrEqual(R * (1 + 1e-12));
        expect(R).toBeGreaterThanOrEqual(Math.max(1 / UA, 1 / capacity) * (1 - 1e-12));
      }),
      runs,
    );
  });
});
