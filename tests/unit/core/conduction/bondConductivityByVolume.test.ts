import { describe, expect, test } from 'vitest';
import { bondConductivityByVolume } from '../../../../src/core/conduction/bondConductivityByVolume.ts';

describe('bondConductivityByVolume', () => {
  test('a bond all over filament is π/4 filament', () => {
    const covered = { filament_m: 1e-4, filamentLength_m: 1e-2, area_m2: 1e-6 };
    const k = bondConductivityByVolume({ adhesive_WPerMK: 1, filament_WPerMK: 2, ...covered });
    expect(k).toBeCloseTo(1 + Math.PI / 4, 12);
  });

  test('no filament leaves the adhesive', () => {
    const bare = { filament_m: 1e-4, filamentLength_m: 0, area_m2: 1e-6 };
    expect(bondConductivityByVolume({ adhesive_WPerMK: 0.8, filament_WPerMK: 0.25, ...bare })).toBe(0.8);
  });
});
