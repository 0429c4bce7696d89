import { describe, expect, test } from 'vitest';
import { splitLoad } from '../../../src/core/resistor/splitLoad.ts';
import { published } from '../../helpers/published.ts';

const resistor = (R_Ohm: number) => ({ R_Ohm, tolerance: 0, on: true, power_W: 0 });

// A source behind a fixed resistance gives most to a load equal to that resistance, and then half of all the watts.
describe('a load in a string with a fixed resistance', () => {
  const theorem = published({
    source: 'ohmJoule',
    where: 'theorem of the greatest power, any electrical text',
    kind: 'from memory',
    methods: ['splitLoad'],
  });
  const exactly = { off: 5e-13, because: 'exact' };
  const share = (R_Ohm: number) =>
    splitLoad({
      kind: 'seriesVolts',
      supply: 20,
      supplyTolerance: 0,
      duty: 1,
      resistors: [resistor(R_Ohm), resistor(50)],
    });

  test('takes most, V²/(4R), where it equals it, and then half of the whole', () => {
    const matched = share(50);
    const [load_W = Number.NaN] = matched.nominal_W;
    theorem.says('power [W]', load_W, '2', exactly);
    theorem.says('share of all the watts', load_W / matched.total_W, '0.5', exactly);
    for (const R_Ohm of [10, 49, 51, 200]) {
      expect(share(R_Ohm).nominal_W[0] as number).toBeLessThan(matched.nominal_W[0] as number);
    }
  });

  test('takes the same at R²/x as at x', () => {
    expect(share(10).nominal_W[0]).toBeCloseTo(share(250).nominal_W[0] as number, 12);
  });

  test('can be driven there by its tolerance: the worst watts are the theorem’s', () => {
    const { worst_W } = splitLoad({
      kind: 'seriesVolts',
      supply: 20,
      supplyTolerance: 0,
      duty: 1,
      resistors: [{ R_Ohm: 60, tolerance: 0.25, on: true, power_W: 0 }, resistor(50)],
    });
    theorem.says('worst power [W]', worst_W[0] ?? Number.NaN, '2', exactly);
  });
});
