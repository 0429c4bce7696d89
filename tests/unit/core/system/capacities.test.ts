import { describe, expect, test } from 'vitest';
import { chipCapacity_JPerK, heatCapacities_JPerK } from '../../../../src/core/system/capacities.ts';
import { bankGeometry } from '../../../../src/core/system/geometry.ts';
import { buildHeatPath } from '../../../../src/core/system/heatPath.ts';
import type { SystemInput } from '../../../../src/core/system/input.ts';
import { sampleInput, samplePart } from '../../../helpers/sampleInput.ts';

function capacitiesOf(input: SystemInput) {
  const bank = bankGeometry(input);
  const heat = buildHeatPath(input, bank);
  const capacity = heatCapacities_JPerK(input, bank, heat);
  return {
    heat,
    capacity,
    at: (node: number | undefined) => capacity[node ?? -1] ?? Number.NaN,
    all: capacity.reduce((sum, value) => sum + value, 0),
  };
}

/** Nothing holds heat but metal and ceramic. */
const bare = (input: SystemInput): SystemInput => ({
  ...input,
  positions: input.positions.map((p) => ({ ...p, part: { ...p.part, coating_m: 0 } })),
  bond: { ...input.bond, filament_m: 1e-12, filamentLength_m: 0 },
  secondFace: { ...input.secondFace, way: 'free', solder_m: 1e-12 },
  box: { ...input.box, sheetHeat_JPerM3K: 0 },
});

describe('heatCapacities_JPerK', () => {
  // Density times heat capacity times volume, worked in a separate program: aluminium 2700·897, alumina 3900·880.
  test('of a sink with one plate, 25 × 25 × 2 mm with nine fins 0.8 × 10 × 25 mm, is 7.3868 J/K', () => {
    const input = bare({ ...sampleInput(1), sink: { ...sampleInput(1).sink, heat_JPerM3K: 2700 * 897 } });
    const { heat, at } = capacitiesOf(input);
    expect(at(heat.sinks[0]?.after)).toBeCloseTo(7.3868, 4);
    expect(at(heat.sinks[1]?.before)).toBeCloseTo(7.3868, 4);
  });

  test('of a chip 6.35 × 3.15 × 0.6 mm is 0.04119 J/K', () => {
    expect(chipCapacity_JPerK({ ...samplePart, ceramicHeat_JPerM3K: 3900 * 880 })).toBeCloseTo(0.04119, 5);
  });

  test('a chip’s goes half to the film and half to the back', () => {
    const { heat, at } = capacitiesOf(bare(sampleInput(1)));
    const [position] = heat.positions;
    expect(at(position?.film)).toBeCloseTo(chipCapacity_JPerK(samplePart) / 2, 9);
    expect(at(position?.body)).toBeCloseTo(chipCapacity_JPerK(samplePart) / 2, 9);
  });

  test('of a sink between two resistors go half of its fins to each plate', () => {
    const { heat, at } = capacitiesOf(bare(sampleInput(2)));
    const [end, inner] = heat.sinks;
    const fins = 9 * 0.8e-3 * 10e-3 * 25e-3 * 2.42e6;
    expect(at(inner?.before)).toBeCloseTo(at(inner?.after), 9);
    expect(at(end?.after) - at(inner?.before)).toBeCloseTo(fins / 2, 9);
  });

  test.each(['tabs', 'bonded', 'free'] as const)(
    'leaves no node but the air without any, second face %s',
    (way) => {
      const input = { ...sampleInput(3), secondFace: { ...sampleInput(3).secondFace, way } };
      const { heat, capacity } = capacitiesOf(input);
      const air = new Set(heat.sinks.map((sink) => sink?.air));
      capacity.forEach((value, node) => {
        if (air.has(node)) expect(value).toBe(0);
        else expect(value).toBeGreaterThan(0);
      });
    },
  );

  test('grow with every part that grows: sheet, bond, coating, tabs', () => {
    const base = sampleInput(2);
    const all = capacitiesOf(base).all;
    const thickCoat = base.positions.map((p) => ({ ...p, part: { ...p.part, coating_m: 60e-6 } }));
    for (const heavier of [
      { ...base, box: { ...base.box, sheet_m: 6e-3 } },
      { ...base, bond: { ...base.bond, filament_m: 0.4e-3 } },
      { ...base, positions: thickCoat },
      { ...base, secondFace: { ...base.secondFace, tabThickness_m: 1e-3 } },
      { ...base, baffle: base.baffle && { ...base.baffle, sheet_m: 6e-3 } },
    ])
      expect(capacitiesOf(heavier).all).toBeGreaterThan(all);
  });

  test('are not there for a sink that is not there', () => {
    const { heat, all } = capacitiesOf({ ...sampleInput(2), hasFirstSink: false });
    expect(heat.sinks[0]).toBeNull();
    expect(all).toBeLessThan(capacitiesOf(sampleInput(2)).all);
  });
});
