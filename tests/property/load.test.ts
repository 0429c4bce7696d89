import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Load, type LoadKind, splitLoad } from '../../src/core/resistor/splitLoad.ts';

const runs = { seed: 20261125, numRuns: 300 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const kind = fc.constantFrom<LoadKind>(
  'wattsEach',
  'seriesVolts',
  'seriesAmps',
  'parallelVolts',
  'parallelAmps',
  'switched',
);
const resistor = fc.record({
  R_Ohm: between(0.1, 1000),
  tolerance: between(0, 0.3),
  on: fc.boolean(),
  power_W: between(0, 10),
});
const load: fc.Arbitrary<Load> = fc.record({
  kind,
  supply: between(0.1, 100),
  supplyTolerance: between(0, 0.1),
  duty: between(0, 1),
  resistors: fc.array(resistor, { minLength: 1, maxLength: 4 }),
});

/** Watts and volts of position `at` for actual resistances, from the circuit and not from formulas of tolerance. */
function actual({ kind, resistors }: Load, R_Ohm: readonly number[], supply: number, at: number) {
  const on = R_Ohm.filter((_, i) => resistors[i]?.on);
  const own_Ohm = R_Ohm[at] as number;
  switch (kind) {
    case 'wattsEach': {
      const watts = resistors[at]?.power_W ?? 0;
      return { watts, volts: Math.sqrt(watts * own_Ohm) };
    }
    case 'seriesVolts': {
      const amps = supply / on.reduce((sum, R) => sum + R, 0);
      return { watts: amps * amps * own_Ohm, volts: amps * own_Ohm };
    }
    case 'seriesAmps':
      return { watts: supply * supply * own_Ohm, volts: supply * own_Ohm };
    case 'parallelVolts':
    case 'switched':
      return { watts: (supply * supply) / own_Ohm, volts: supply };
    case 'parallelAmps': {
      const volts = supply / on.reduce((sum, R) => sum + 1 / R, 0);
      return { watts: (volts * volts) / own_Ohm, volts };
    }
  }
}

/** Largest watts and volts of `at` over a grid of its own resistance, every corner of the others, and both supply ends. */
function bruteForce(given: Load, at: number, steps: number) {
  const { resistors, supply, supplyTolerance } = given;
  let watts = 0;
  let volts = 0;
  for (let corner = 0; corner < 2 ** resistors.length; corner++) {
    for (let i = 0; i <= steps; i++) {
      const R_Ohm = resistors.map((r, j) => {
        const place = j === at ? (2 * i) / steps - 1 : (corner >> j) & 1 ? 1 : -1;
        return r.R_Ohm * (1 + place * r.tolerance);
      });
      for (const end of [-1, 1]) {
        const found = actual(given, R_Ohm, supply * (1 + end * supplyTolerance), at);
        watts = Math.max(watts, found.watts);
        volts = Math.max(volts, found.volts);
      }
    }
  }
  return { watts, volts };
}

describe('the load of every position', () => {
  test('is at its worst just what the worst circuit within the tolerances gives it, and its volts likewise', () => {
    fc.assert(
      fc.property(load, (given) => {
        const { worst_W, voltage_V } = splitLoad(given);
        given.resistors.forEach(({ on }, at) => {
          if (!on) {
            expect([worst_W[at], voltage_V[at]]).toEqual([0, 0]);
            return;
          }
          const worst = bruteForce(given, at, 40);
          const ours = worst_W[at] as number;
          const found = worst.watts * given.duty;
          expect(ours).toBeGreaterThanOrEqual(found * (1 - 1e-12));
          // The grid steps over a summit by 1/80 of a tolerance at most: (0.3/40)² of the watts.
          expect(ours).toBeLessThanOrEqual(found * (1 + 1e-4) + 1e-300);
          expect(Math.abs((voltage_V[at] as number) - worst.volts)).toBeLessThanOrEqual(1e-12 * worst.volts);
        });
      }),
      runs,
    );
  });

  test('is nominally what the circuit gives', () => {
    fc.assert(
      fc.property(load, (given) => {
        const { nominal_W } = splitLoad(given);
        const R_Ohm = given.resistors.map((r) => r.R_Ohm);
        given.resistors.forEach(({ on }, at) => {
          const watts = on ? actual(given, R_Ohm, given.supply, at).watts * given.duty : 0;
          expect(Math.abs((nominal_W[at] as number) - watts)).toBeLessThanOrEqual(1e-12 * watts);
        });
      }),
      runs,
    );
  });

  test('is never less at its worst than nominally', () => {
    fc.assert(
      fc.property(load, (given) => {
        const { nominal_W, worst_W } = splitLoad(given);
        worst_W.forEach((worst, i) => {
          expect(worst).toBeGreaterThanOrEqual((nominal_W[i] as number) * (1 - 1e-12));
        });
      }),
      runs,
    );
  });

  test('in a string or set adds up to what the supply gives', () => {
    fc.assert(
      fc.property(load, (given) => {
        const on = given.resistors.filter((r) => r.on);
        const series_Ohm = on.reduce((sum, r) => sum + r.R_Ohm, 0);
        const parallel_S = on.reduce((sum, r) => sum + 1 / r.R_Ohm, 0);
        const { supply, duty } = given;
        const total: Partial<Record<LoadKind, number>> = {
          seriesVolts: on.length > 0 ? (supply * supply) / series_Ohm : 0,
          seriesAmps: supply * supply * series_Ohm,
          parallelVolts: supply * supply * parallel_S,
          parallelAmps: on.length > 0 ? (supply * supply) / parallel_S : 0,
        };
        const wanted = total[given.kind];
        if (wanted === undefined) return;
        expect(Math.abs(splitLoad(given).total_W - wanted * duty)).toBeLessThanOrEqual(1e-12 * wanted);
      }),
      runs,
    );
  });
});
