import { describe, expect, test } from 'vitest';
import {
  type Load,
  type LoadKind,
  type LoadResistor,
  splitLoad,
} from '../../../../src/core/resistor/splitLoad.ts';

const resistor = (R_Ohm: number, tolerance = 0, on = true, power_W = 0): LoadResistor => ({
  R_Ohm,
  tolerance,
  on,
  power_W,
});

const load = (kind: LoadKind, supply: number, resistors: LoadResistor[], more: Partial<Load> = {}): Load => ({
  kind,
  supply,
  supplyTolerance: 0,
  duty: 1,
  resistors,
  ...more,
});

const near = (actual: readonly number[], expected: readonly number[]) => {
  expect(actual).toHaveLength(expected.length);
  expected.forEach((value, i) => {
    expect(actual[i]).toBeCloseTo(value, 12);
  });
};

describe('nominal watts, volts and amps, worked by hand', () => {
  const trio = [resistor(10), resistor(20), resistor(30)];
  test.each([
    ['seriesVolts', 60, [10, 20, 30], [10, 20, 30], [1, 1, 1]],
    ['seriesAmps', 2, [40, 80, 120], [20, 40, 60], [2, 2, 2]],
    ['parallelVolts', 60, [360, 180, 120], [60, 60, 60], [6, 3, 2]],
    ['parallelAmps', 11, [360, 180, 120], [60, 60, 60], [6, 3, 2]],
    ['switched', 60, [360, 180, 120], [60, 60, 60], [6, 3, 2]],
  ] as const)('%s of %d', (kind, supply, watts, volts, amps) => {
    const split = splitLoad(load(kind, supply, trio));
    near(split.nominal_W, watts);
    near(split.worst_W, watts);
    near(split.voltage_V, volts);
    near(split.current_A, amps);
    expect(split.total_W).toBeCloseTo(
      watts.reduce((sum, power) => sum + power, 0),
      11,
    );
  });

  test('watts each', () => {
    const split = splitLoad(load('wattsEach', 0, [resistor(25, 0, true, 4), resistor(9, 0, true, 1)]));
    near(split.nominal_W, [4, 1]);
    near(split.voltage_V, [10, 3]);
    near(split.current_A, [0.4, 1 / 3]);
    expect(split.total_W).toBe(5);
  });
});

describe('an off resistor', () => {
  const trio = [resistor(10), resistor(20, 0, false), resistor(30)];
  test('takes nothing, whatever the load', () => {
    for (const kind of ['seriesVolts', 'seriesAmps', 'parallelVolts', 'parallelAmps', 'switched'] as const) {
      const { nominal_W, worst_W, voltage_V, current_A } = splitLoad(load(kind, 10, trio));
      for (const list of [nominal_W, worst_W, voltage_V, current_A]) expect(list[1]).toBe(0);
    }
  });

  test('is bridged in a string', () => {
    near(splitLoad(load('seriesVolts', 40, trio)).voltage_V, [10, 0, 30]);
  });

  test('is disconnected in a set', () => {
    near(splitLoad(load('parallelAmps', 4, trio)).current_A, [3, 0, 1]);
  });

  test('leaves an idle box where all are off', () => {
    const split = splitLoad(load('seriesVolts', 40, [resistor(10, 0.1, false)]));
    expect(split).toEqual({ nominal_W: [0], worst_W: [0], voltage_V: [0], current_A: [0], total_W: 0 });
  });
});

describe('duty', () => {
  test('scales mean watts, not volts and amps', () => {
    const always = splitLoad(load('parallelVolts', 12, [resistor(6, 0.05)]));
    const quarter = splitLoad(load('parallelVolts', 12, [resistor(6, 0.05)], { duty: 0.25 }));
    near(
      quarter.nominal_W,
      [always.nominal_W[0] as number].map((power) => power / 4),
    );
    near(
      quarter.worst_W,
      [always.worst_W[0] as number].map((power) => power / 4),
    );
    expect(quarter.voltage_V).toEqual(always.voltage_V);
    expect(quarter.current_A).toEqual(always.current_A);
    expect(quarter.total_W).toBeCloseTo(always.total_W / 4, 14);
  });
});

describe('the worst corner', () => {
  /** Most watts, volts and amps of the first resistor over a fine grid of the tolerance box. */
  function mostOnGrid(kind: LoadKind, supply: number, resistors: readonly LoadResistor[], steps: number) {
    const most = { watts: 0, volts: 0, amps: 0 };
    const visit = (values: number[]): void => {
      const next = resistors[values.length];
      if (next !== undefined) {
        for (let i = 0; i <= steps; i++) {
          visit([...values, next.R_Ohm * (1 - next.tolerance + (2 * next.tolerance * i) / steps)]);
        }
        return;
      }
      const R = values[0] as number;
      const volts =
        kind === 'seriesVolts'
          ? (supply * R) / values.reduce((sum, r) => sum + r, 0)
          : supply / values.reduce((sum, r) => sum + 1 / r, 0);
      most.watts = Math.max(most.watts, volts ** 2 / R);
      most.volts = Math.max(most.volts, volts);
      most.amps = Math.max(most.amps, volts / R);
    };
    visit([]);
    return most;
  }

  test.each([
    ['seriesVolts', [resistor(10, 0.05), resistor(30, 0.1), resistor(20, 0.02)], 'one among larger others'],
    [
      'seriesVolts',
      [resistor(50, 0.1), resistor(5, 0.1), resistor(4, 0.05)],
      'one that outweighs the others',
    ],
    [
      'seriesVolts',
      [resistor(20, 0.3), resistor(12, 0.1), resistor(11, 0.1)],
      'one that can match the others',
    ],
    ['parallelAmps', [resistor(10, 0.05), resistor(30, 0.1), resistor(20, 0.02)], 'one below the others'],
    ['parallelAmps', [resistor(50, 0.1), resistor(5, 0.1), resistor(4, 0.05)], 'one far above the others'],
    [
      'parallelAmps',
      [resistor(5, 0.3), resistor(12, 0.1), resistor(11, 0.1)],
      'one that can match the others',
    ],
  ] as const)('%s: the exact most over the tolerance box (%#)', (kind, resistors) => {
    const split = splitLoad(load(kind, 12, [...resistors]));
    const grid = mostOnGrid(kind, 12, resistors, 60);
    expect(split.worst_W[0] as number).toBeGreaterThanOrEqual(grid.watts * (1 - 1e-12));
    expect(split.worst_W[0] as number).toBeLessThan(grid.watts * (1 + 1e-4)); // the grid may straddle an inner peak
    expect(split.voltage_V[0]).toBeCloseTo(grid.volts, 11);
    expect(split.current_A[0]).toBeCloseTo(grid.amps, 11);
  });

  test('of two equal resistors in a string is the matched half, not a corner', () => {
    // 10 Ω ± 10 % both: the other at 9 Ω, this one at 9 Ω too, 12 V: 6²/9.
    const split = splitLoad(load('seriesVolts', 12, [resistor(10, 0.1), resistor(10, 0.1)]));
    near(split.worst_W, [4, 4]);
  });

  test('alone in a string has the whole supply', () => {
    const split = splitLoad(load('seriesVolts', 12, [resistor(10, 0.2)]));
    near(split.worst_W, [144 / 8]);
    near(split.voltage_V, [12]);
    near(split.current_A, [1.5]);
  });

  test('counts the supply’s tolerance twice over in watts and once in volts', () => {
    const split = splitLoad(load('switched', 10, [resistor(10)], { supplyTolerance: 0.1 }));
    near(split.nominal_W, [10]);
    near(split.worst_W, [12.1]);
    near(split.voltage_V, [11]);
  });

  test('of amps through a string is at the high end', () => {
    const split = splitLoad(load('seriesAmps', 2, [resistor(10, 0.05)], { supplyTolerance: 0.01 }));
    near(split.worst_W, [2.02 ** 2 * 10.5]);
    near(split.voltage_V, [2.02 * 10.5]);
  });

  test('of watts each stays as asked, with most volts at the high and most amps at the low end', () => {
    const split = splitLoad(load('wattsEach', 0, [resistor(100, 0.21, true, 1)]));
    near(split.worst_W, [1]);
    near(split.voltage_V, [11]);
    near(split.current_A, [1 / Math.sqrt(79)]);
  });
});
