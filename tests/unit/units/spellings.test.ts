import { describe, expect, test } from 'vitest';
import { dimensionNames, dimensions } from '../../../src/units/dimensions.ts';
import { dimensionOfSpelling, findSpelling, plainSpelling } from '../../../src/units/spellings.ts';

describe('the spelling of a unit', () => {
  test.each(dimensionNames)('%s: every spelling leads to its own unit and to no other', (name) => {
    for (const unit of dimensions[name].units) {
      for (const spelling of unit.spellings)
        expect(findSpelling(name, spelling)?.key, spelling).toBe(unit.key);
    }
  });

  test.each(dimensionNames)('%s: no two units differ by case alone unless both insist on it', (name) => {
    const owners = new Map<string, Set<string>>();
    for (const unit of dimensions[name].units) {
      for (const spelling of unit.exactCase ? [] : unit.spellings) {
        const folded = plainSpelling(spelling).toLowerCase();
        owners.set(folded, (owners.get(folded) ?? new Set()).add(unit.key));
      }
    }
    for (const [folded, keys] of owners) expect([...keys], folded).toHaveLength(1);
  });

  test('is one for all the ways to write it', () => {
    for (const written of ['W/(m·K)', 'W/(m K)', 'W / (m*K)', 'w/mk', 'W/m/K', 'W·m⁻¹·K⁻¹']) {
      expect(findSpelling('conductivity', written)?.key, written).toBe('W/(m K)');
    }
    for (const written of ['BTU·in/(h·ft²·°F)', 'Btu in/(h ft2 degF)', 'BTU·in/(hr·ft²·°F)', 'BTU-in']) {
      const key = written === 'BTU-in' ? undefined : 'BTU in/(h ft2 degF)';
      expect(findSpelling('conductivity', written)?.key, written).toBe(key);
    }
  });

  test('does not join what a blank parts', () => {
    expect(findSpelling('length', 'm m')).toBeNull();
    expect(findSpelling('length', 'i n')).toBeNull();
  });

  test('finds the quantity it belongs to, the usual one first', () => {
    expect(dimensionOfSpelling('mm')).toBe('length');
    expect(dimensionOfSpelling('°C')).toBe('temperature');
    expect(dimensionOfSpelling('%')).toBe('ratio');
    expect(dimensionOfSpelling('kΩ')).toBe('resistance');
    expect(dimensionOfSpelling('furlong')).toBeNull();
  });
});
