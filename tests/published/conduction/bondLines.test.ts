import { describe, expect, test } from 'vitest';
import { bondConductivityByVolume } from '../../../src/core/conduction/bondConductivityByVolume.ts';
import { bondConductivityWithFilament } from '../../../src/core/conduction/bondConductivityWithFilament.ts';
import { bondResistance_KPerW } from '../../../src/core/conduction/bondResistance_KPerW.ts';

// Worked by hand from t/(k·A); a trade page that says 0.5 K·cm²/W for the first one is out by ten.
describe('Bond lines, worked by hand', () => {
  test('100 µm at 0.2 W/mK is 5.0 K·cm²/W', () => {
    const oneSquareCentimetre_m2 = 1e-4;
    expect(bondResistance_KPerW(100e-6, 0.2, oneSquareCentimetre_m2, 0, 0)).toBeCloseTo(5.0, 6);
  });

  test.each([
    [0.15e-3, 1, 7.5],
    [0.25e-3, 1, 12.5],
    [0.15e-3, 0.25, 30],
  ])('%f m at %f W/mK on 20 mm² is %f K/W', (thickness_m, k_WPerMK, printed_KPerW) => {
    expect(bondResistance_KPerW(thickness_m, k_WPerMK, 20e-6, 0, 0)).toBeCloseTo(printed_KPerW, 3);
  });
});

// Numerical integration over the filament's section in a separate program.
describe('Two 0.15 mm nylon filaments × 6 mm in 20 mm² of adhesive at 1 W/mK', () => {
  const bond = {
    adhesive_WPerMK: 1,
    filament_WPerMK: 0.25,
    filament_m: 0.15e-3,
    filamentLength_m: 12e-3,
    area_m2: 20e-6,
  };

  test('is 0.938 W/mK by columns', () => {
    expect(bondConductivityWithFilament(bond)).toBeCloseTo(0.938, 3);
  });

  test('is 0.316 W/mK right under the filament', () => {
    const covered = { ...bond, area_m2: bond.filament_m * bond.filamentLength_m };
    expect(bondConductivityWithFilament(covered)).toBeCloseTo(0.316, 3);
  });

  test('is 0.947 W/mK by volume', () => {
    expect(bondConductivityByVolume(bond)).toBeCloseTo(0.947, 3);
  });
});
