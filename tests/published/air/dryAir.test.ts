import { describe, test } from 'vitest';
import { airProperties, createAirProperties } from '../../../src/core/air/airProperties.ts';
import { standardPressure_Pa } from '../../../src/core/air/standardPressure_Pa.ts';
import { published } from '../../helpers/published.ts';

function air(T_K: number, p_Pa = 101325) {
  const properties = createAirProperties();
  airProperties(properties, T_K, p_Pa, 1);
  return properties;
}

describe('Dry air at one atmosphere', () => {
  // Viscosity and conductivity agree to all digits with the library.
  const library = published({
    source: 'ussa1976',
    where: 'separate computation; viscosity and conductivity also by the Python library fluids 1.0.22',
    kind: 'worked again',
    methods: ['density', 'viscosity', 'conductivity'],
  });
  const fit = published({
    source: 'airHandbook',
    where: 'fit to tables, worked in a separate program',
    kind: 'worked again',
    methods: ['heatCapacity'],
  });

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
    library.says('density [kg/m³]', rho_kgPerM3, rho.toFixed(4));
    library.says('viscosity [10⁻⁵ Pa·s]', mu_PaS * 1e5, mu5.toFixed(4));
    library.says('thermal conductivity [W/(m·K)]', k_WPerMK, k.toFixed(5));
    fit.says('specific heat [J/(kg·K)]', cp_JPerKgK, cp.toFixed(1));
    fit.says('Prandtl number', prandtl, pr.toFixed(4));
  });
});

describe('Textbook air', () => {
  const table = published({
    source: 'incropera',
    where: 'properties used in ex. 8.6 and 9.2',
    kind: 'handbook',
    methods: ['density', 'viscosity', 'conductivity', 'heatCapacity'],
  });
  const few = { within: 0.02, because: 'two or three printed digits, and the textbook’s air is at 100 kPa' };
  const formulas = { within: 0.005, because: 'scatter of the property formulas' };

  test('350 K: k 0.030, μ 20.82·10⁻⁶, Pr 0.70', () => {
    const { k_WPerMK, mu_PaS, prandtl } = air(350);
    table.says('thermal conductivity [W/(m·K)]', k_WPerMK, '0.030', formulas);
    table.says('viscosity [Pa·s]', mu_PaS, '20.82e-6', formulas);
    table.says('Prandtl number', prandtl, '0.70', few);
  });

  test('400 K: k 0.0338, ν 26.4·10⁻⁶, Pr 0.69', () => {
    const { k_WPerMK, mu_PaS, rho_kgPerM3, prandtl } = air(400);
    table.says('thermal conductivity [W/(m·K)]', k_WPerMK, '0.0338', formulas);
    table.says('kinematic viscosity [m²/s]', mu_PaS / rho_kgPerM3, '26.4e-6', few);
    table.says('Prandtl number', prandtl, '0.69', few);
  });
});

describe('Standard atmosphere', () => {
  const formula = published({
    source: 'iso2533',
    where: 'the standard’s formula in a separate program, geopotential altitude',
    kind: 'worked again',
    methods: ['standardPressure', 'density'],
  });
  test.each([
    [0, 101325, 1.225, 1.1839],
    [1500, 84556.0, 1.05807, 0.988],
    [3000, 70108.5, 0.90912, 0.8192],
  ])('%d m: %f Pa, %f kg/m³ in its own air, %f in a room at 25 °C', (altitude, p, own, room) => {
    const p_Pa = standardPressure_Pa(altitude);
    formula.says('pressure [Pa]', p_Pa, p.toFixed(1));
    const own_kgPerM3 = air(288.15 - 0.0065 * altitude, p_Pa).rho_kgPerM3;
    formula.says('density of the air up there [kg/m³]', own_kgPerM3, own.toFixed(5));
    formula.says('density in a room at 25 °C [kg/m³]', air(298.15, p_Pa).rho_kgPerM3, room.toFixed(4));
  });

  const library = published({
    source: 'iso2533',
    where: 'Python library fluids 1.0.22, which takes geometric altitude',
    kind: 'worked again',
    methods: ['standardPressure'],
  });
  test.each([
    [1500, 84559.7],
    [3000, 70121.2],
  ])('%d geometric metres: %f Pa', (altitude, p) => {
    const earth_m = 6356766; // geopotential from geometric altitude, standard atmosphere of 1976
    library.says(
      'pressure [Pa]',
      standardPressure_Pa((earth_m * altitude) / (earth_m + altitude)),
      p.toFixed(1),
      { off: 0.15, because: 'g is rounded there' },
    );
  });
});
