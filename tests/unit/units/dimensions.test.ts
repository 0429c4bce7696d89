import { describe, expect, test } from 'vitest';
import { dimensionNames, dimensions, findUnit, unitOf } from '../../../src/units/dimensions.ts';

describe('the table of units', () => {
  test.each(dimensionNames)('%s: shows units that it has, and has no key twice', (name) => {
    const { units, metric, inch, compound = [], infix = {} } = dimensions[name];
    const keys = units.map(({ key }) => key);
    expect(keys).toEqual([...new Set(keys)]);
    for (const key of [metric, inch, ...compound.flat(), ...Object.values(infix)]) {
      expect(keys).toContain(key);
    }
  });

  test.each(dimensionNames)('%s: has exactly one way to its SI unit and no scale that is none', (name) => {
    const { units } = dimensions[name];
    expect(units.some(({ factor, divisor, offset }) => factor === divisor && offset === 0)).toBe(
      name !== 'soundLevel' || units.length === 1,
    );
    for (const { factor, divisor } of units) {
      expect(factor / divisor).toBeGreaterThan(0);
      expect(Number.isFinite(factor / divisor)).toBe(true);
    }
  });

  test('is asked for a unit that does not exist without harm', () => {
    expect(findUnit('length', 'toString')).toBeNull();
    expect(findUnit('length', 'mm')?.symbol).toBe('mm');
    expect(() => unitOf('pressure', 'mm')).toThrow('pressure has no unit "mm"');
  });

  test('names every kind with its article, to stand in a sentence', () => {
    for (const name of dimensionNames) expect(dimensions[name].noun).toMatch(/^an? [a-z]/);
  });
});
