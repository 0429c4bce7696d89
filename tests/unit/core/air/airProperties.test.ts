import { describe, expect, test } from 'vitest';
import { airProperties, createAirProperties } from '../../../../src/core/air/airProperties.ts';
import { conductivity_WPerMK } from '../../../../src/core/air/conductivity_WPerMK.ts';
import { density_kgPerM3 } from '../../../../src/core/air/density_kgPerM3.ts';
import { heatCapacity_JPerKgK } from '../../../../src/core/air/heatCapacity_JPerKgK.ts';
import { viscosity_PaS } from '../../../../src/core/air/viscosity_PaS.ts';

describe('airProperties', () => {
  test('fills what is given with what each method says', () => {
    const air = createAirProperties();
    airProperties(air, 320, 9e4, 1);
    expect(air.rho_kgPerM3).toBe(density_kgPerM3(320, 9e4));
    expect(air.mu_PaS).toBe(viscosity_PaS(320));
    expect(air.k_WPerMK).toBe(conductivity_WPerMK(320));
    expect(air.cp_JPerKgK).toBe(heatCapacity_JPerKgK(320));
    expect(air.prandtl).toBeCloseTo((air.mu_PaS * air.cp_JPerKgK) / air.k_WPerMK, 14);
  });

  test('humidity enters the density only', () => {
    const dry = createAirProperties();
    const damp = createAirProperties();
    airProperties(dry, 320, 9e4, 1);
    airProperties(damp, 320, 9e4, 0.99);
    expect(damp).toEqual({ ...dry, rho_kgPerM3: dry.rho_kgPerM3 * 0.99 });
  });

  test('stays finite where an iterate wanders far off', () => {
    const air = createAirProperties();
    for (const T_K of [1, 50, 3000, 1e5]) {
      airProperties(air, T_K, 101325, 1);
      for (const value of Object.values(air)) expect(Number.isFinite(value)).toBe(true);
    }
  });
});
