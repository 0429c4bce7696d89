import { describe, expect, test } from 'vitest';
import { type Load, type LoadKind, splitLoad } from '../../../../src/core/resistor/splitLoad.ts';

const resistor = (R_Ohm: number, over: Partial<Load['resistors'][number]> = {}) => ({
  R_Ohm,
  tolerance: 0.05,
  on: true,
  power_W: 2,
  ...over,
});

function split(kind: LoadKind, supply: number, resistors: Load['resistors'], over: Partial<Load> = {}) {
  return splitLoad({ kind, supply, supplyTolerance: 0, duty: 1, resistors, ...over });
}

const three = [resistor(10), resistor(20), resistor(30)];
const near = (found: readonly number[], wanted: readonly number[]) => {
  expect(found).toHaveLength(wanted.length);
  found.forEach((value, i) => {
    expect(value).toBeCloseTo(wanted[i] as number, 10);
  });
};

describe('splitLoad, nominal', () => {
  test('volts across a string share as the resistances', () => {
    near(split('seriesVolts', 12, three).nominal_W, [0.4, 0.8, 1.2]);
  });

  test('amps through a string heat as the resistances', () => {
    near(split('seriesAmps', 0.5, three).nominal_W, [2.5, 5, 7.5]);
  });

  test('volts across a set, or each by itself, heat as the conductances', () => {
    for (const kind of ['parallelVolts', 'switched'] as const)
      near(split(kind, 6, three).nominal_W, [3.6, 1.8, 1.2]);
  });

  test('amps into a set share as the conductances', () => {
    // 1.1 A into 10, 20 and 30 Ω: 5.4545 Ω, 6 V.
    near(split('parallelAmps', 1.1, three).nominal_W, [3.6, 1.8, 1.2]);
  });

  test('watts each are taken as given', () => {
    near(split('wattsEach', 0, [resistor(10), resistor(20, { power_W: 3 })]).nominal_W, [2, 3]);
  });

  test('adds up to what the supply gives', () => {
    expect(split('seriesVolts', 12, three).total_W).toBeCloseTo(144 / 60, 12);
    expect(split('parallelAmps', 1.1, three).total_W).toBeCloseTo(1.1 * 6, 12);
  });

  test('duty scales the mean watts, worst ones too, but neither volts nor amps', () => {
    const full = split('parallelVolts', 6, three);
    const part = split('parallelVolts', 6, three, { duty: 0.25 });
    near(
      part.nominal_W,
      full.nominal_W.map((w) => w / 4),
    );
    near(
      part.worst_W,
      full.worst_W.map((w) => w / 4),
    );
    expect([part.voltage_V, part.current_A]).toEqual([full.voltage_V, full.current_A]);
  });
});

describe('a resistor that is off', () => {
  const oneOff = [resistor(10), resistor(20, { on: false }), resistor(30)];

  test('takes nothing in any load', () => {
    for (const kind of [
      'wattsEach',
      'seriesVolts',
      'seriesAmps',
      'parallelVolts',
      'parallelAmps',
      'switched',
    ] as const) {
      const { nominal_W, worst_W, voltage_V, current_A } = split(kind, 1, oneOff);
      expect([nominal_W[1], worst_W[1], voltage_V[1], current_A[1]]).toEqual([0, 0, 0, 0]);
    }
  });

  test('is bridged in a string and cut off from a set', () => {
    near(split('seriesVolts', 12, oneOff).nominal_W, [0.9, 0, 2.7]);
    near(split('parallelAmps', 0.4, oneOff).nominal_W, [0.9, 0, 0.3]);
  });

  test('leaves finite numbers where all are off', () => {
    const off = [resistor(10, { on: false })];
    for (const kind of ['seriesVolts', 'parallelAmps'] as const) near(split(kind, 5, off).worst_W, [0]);
  });
});

describe('splitLoad, worst', () => {
  test('a lone resistor on volts is worst when low, on amps when high', () => {
    near(split('seriesVolts', 10, [resistor(10)]).worst_W, [100 / 9.5]);
    near(split('parallelAmps', 1, [resistor(10)]).worst_W, [10.5]);
  });

  test('in a string of unlike ones the small one is worst when high, the large one when low', () => {
    const [small, large] = split('seriesVolts', 10, [resistor(10), resistor(100)]).worst_W;
    expect(small).toBeCloseTo(10.5 * (10 / (10.5 + 95)) ** 2, 12);
    expect(large).toBeCloseTo(95 * (10 / (95 + 9.5)) ** 2, 12);
  });

  test('in a string of two alike each is worst where it equals the other', () => {
    near(split('seriesVolts', 10, [resistor(10), resistor(10)]).worst_W, [100 / 38, 100 / 38]);
  });

  test('the supply’s tolerance counts twice in watts and once in volts', () => {
    const { worst_W, voltage_V } = split('parallelVolts', 10, [resistor(10, { tolerance: 0 })], {
      supplyTolerance: 0.1,
    });
    near(worst_W, [12.1]);
    near(voltage_V, [11]);
  });
});

describe('volts and amps of each element', () => {
  test('follow from watts each', () => {
    const { voltage_V, current_A } = split('wattsEach', 0, [resistor(8, { tolerance: 0 })]);
    near(voltage_V, [4]);
    near(current_A, [0.5]);
  });

  test('of watts each are most volts at the high end and most amps at the low end', () => {
    const { voltage_V, current_A } = split('wattsEach', 0, [resistor(100, { tolerance: 0.19, power_W: 1 })]);
    expect(voltage_V[0]).toBeCloseTo(Math.sqrt(119), 12);
    expect(current_A[0]).toBeCloseTo(1 / 9, 12);
  });

  test('of a string are most where this one is high and the others low; the amps where all are low', () => {
    const { voltage_V, current_A } = split('seriesVolts', 10, [resistor(10), resistor(30)]);
    expect(voltage_V[0]).toBeCloseTo((10 * 10.5) / (10.5 + 28.5), 12);
    near(current_A, [10 / 38, 10 / 38]);
  });

  test('of a set fed with amps are most where all are high; the amps where this one is low', () => {
    const { voltage_V, current_A } = split('parallelAmps', 1, [resistor(10), resistor(30)]);
    near(voltage_V, [7.5 * 1.05, 7.5 * 1.05]);
    expect(current_A[0]).toBeCloseTo(31.5 / (9.5 + 31.5), 12);
  });
});
