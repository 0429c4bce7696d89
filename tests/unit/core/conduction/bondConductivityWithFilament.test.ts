import { describe, expect, test } from 'vitest';
import { bondConductivityWithFilament } from '../../../../src/core/conduction/bondConductivityWithFilament.ts';

/** The whole bond lies over filament: one diameter wide, one long. */
const covered = { filament_m: 1e-4, filamentLength_m: 1e-2, area_m2: 1e-6 };

/** Columns summed one by one over the half turn, middle of each slice. */
function summed(adhesive: number, filament: number, slices = 20_000): number {
  let sum = 0;
  for (let i = 0; i < slices; i++) {
    const cos = Math.cos(Math.PI * ((i + 0.5) / slices - 0.5));
    sum += cos / ((1 - cos) / adhesive + cos / filament);
  }
  return (sum * Math.PI) / slices / 2;
}

describe('bondConductivityWithFilament', () => {
  test.each([
    [1, 0.25],
    [1, 0.5],
    [0.2, 0.25],
    [0.25, 0.25],
    [0.25, 0.2500001],
    [0.25, 0.25024],
    [0.25, 0.2503],
    [0.25, 0.2499],
    [0.2, 400],
    [3, 0.02],
  ])('adhesive %f and filament %f W/mK agree with columns summed one by one', (adhesive, filament) => {
    const closed = bondConductivityWithFilament({
      adhesive_WPerMK: adhesive,
      filament_WPerMK: filament,
      ...covered,
    });
    const within = 2e-6; // slices near the edge of a filament far better than its adhesive
    expect(Math.abs(closed / summed(adhesive, filament) - 1)).toBeLessThan(within);
  });

  test('no filament leaves the adhesive', () => {
    const bare = { ...covered, filamentLength_m: 0 };
    expect(bondConductivityWithFilament({ adhesive_WPerMK: 0.8, filament_WPerMK: 0.25, ...bare })).toBe(0.8);
  });

  test('a filament like the adhesive changes nothing', () => {
    const alike = { adhesive_WPerMK: 0.25, filament_WPerMK: 0.25, ...covered };
    expect(bondConductivityWithFilament(alike)).toBeCloseTo(0.25, 12);
  });
});
