import { describe, expect, test } from 'vitest';
import { airProperties, createAirProperties } from '../../../src/core/air/airProperties.ts';
import { standardPressure_Pa } from '../../../src/core/air/standardPressure_Pa.ts';

function air(T_K: number, p_Pa = 101325) {
  const properties = createAirProperties();
  airProperties(properties, T_K, p_Pa, 1);
  return properties;
}

/** Half a unit of the last digit. */
const near = (actual: number, printed: number, digit: number) =>
  expect(Math.abs(actual - printed)).toBeLessThanOrEqual(0.501 * digit);

// Independent computation; viscosity and conductivity agree to all digits with the Python library fluids 1.0.22
// (standard atmosphere of 1976).
describe('Dry air at one atmosphere', () => {
  test.each([
    [288.15, 1.225, 1.7894, 0.02533, 1004.6, 0.7098],
    [293.15, 1.2041, 1.8134, 0.02572, 1004.9, 0.7086],
    [298.15, 1.1839, 1.8372, 0.02611, 1005.1, 0.7073],
    [300, 1.1766, 1.846, 0.02625, 1005.2, 0.7069],
    [313.15, 1.1272, 1.9076, 0.02727, 1006.0, 0.7038],
    [350, 1.0085, 2.0736, 0.03004, 1008.7, 0.6962],
    [400, 0.8825, 2.2853, 0.03366, 1013.5, 0.6882],
  ])('%d K: ρ %f, μ %f·10⁻⁵, k %f, c_p %f, Pr %f', (T, rho, mu5, k, cp, pr) => {
    const { rho_kgPerM3, mu_PaS, k_WPerMK, cp_JPerKgK, prandtl } = air(T);
    near(rho_kgPerM3, rho, 1e-4);
    near(mu_PaS * 1e5, mu5, 1e-4);
    near(k_WPerMK, k, 1e-5);
    near(cp_JPerKgK, cp, 0.1);
    near(prandtl, pr, 1e-4);
  });
});

// Incropera, 6th ed., properties used in ex. 8.6 and 9.2; read in a public textbook companion.
describe('Textbook air', () => {
  const within = 0.02; // two or three printed digits, and the textbook's air is at 100 kPa

  test('350 K: k 0.030, μ 20.82·10⁻⁶, Pr 0.70', () => {
    const { k_WPerMK, mu_PaS, prandtl } = air(350);
    expect(Math.abs(k_WPerMK / 0.03 - 1)).toBeLessThan(0.005); // two printed digits
    expect(Math.abs(mu_PaS / 20.82e-6 - 1)).toBeLessThan(0.005); // scatter of the property formulas
    expect(Math.abs(prandtl / 0.7 - 1)).toBeLessThan(within);
  });

  test('400 K: k 0.0338, ν 26.4·10⁻⁶, Pr 0.69', () => {
    const { k_WPerMK, mu_PaS, rho_kgPerM3, prandtl } = air(400);
    expect(Math.abs(k_WPerMK / 0.0338 - 1)).toBeLessThan(0.005); // scatter of the property formulas
    expect(Math.abs(mu_PaS / rho_kgPerM3 / 26.4e-6 - 1)).toBeLessThan(within);
    expect(Math.abs(prandtl / 0.69 - 1)).toBeLessThan(within);
  });
});

describe('Standard atmosphere', () => {
  // Independent computation, geopotential altitude.
  test.each([
    [0, 101325, 1.225, 1.1839],
    [1500, 84556.0, 1.05807, 0.988],
    [3000, 70108.5, 0.90912, 0.8192],
  ])('%d m: %f Pa, %f kg/m³ in its own air, %f in a room at 25 °C', (altitude, p, own, room) => {
    const p_Pa = standardPressure_Pa(altitude);
    near(p_Pa, p, 0.1);
    near(air(288.15 - 0.0065 * altitude, p_Pa).rho_kgPerM3, own, 1e-5);
    near(air(298.15, p_Pa).rho_kgPerM3, room, 1e-4);
  });

  // Python library fluids 1.0.22, which takes geometric altitude.
  test.each([
    [1500, 84559.7],
    [3000, 70121.2],
  ])('%d geometric metres: %f Pa', (altitude, p) => {
    const earth_m = 6356766; // geopotential from geometric altitude, standard atmosphere of 1976
    near(standardPressure_Pa((earth_m * altitude) / (earth_m + altitude)), p, 0.3); // g rounded there
  });
});
