import { describe, test } from 'vitest';
import { density_kgPerM3 } from '../../../src/core/air/density_kgPerM3.ts';
import { moistFactor } from '../../../src/core/air/moistFactor.ts';
import { saturationPressure_Pa } from '../../../src/core/air/saturationPressure_Pa.ts';
import { published } from '../../helpers/published.ts';

describe('Moist air at one atmosphere', () => {
  const again = published({
    source: 'alduchovEskridge1996',
    where: 'ρ = (p − e)/(R_d·T) + e/(R_v·T) with the Magnus form, in a separate program',
    kind: 'worked again',
    methods: ['moistFactor', 'saturationPressure'],
  });
  const steam = published({
    source: 'Steam tables',
    kind: 'from memory',
    methods: ['saturationPressure'],
  });

  test.each([
    [25, 0, 1.18391],
    [25, 0.5, 1.17693],
    [25, 1, 1.16995],
    [40, 1, 1.09619],
  ])('%d °C at a relative humidity of %f: %f kg/m³', (t, humidity, rho) => {
    const T_K = t + 273.15;
    const density = density_kgPerM3(T_K, 101325) * moistFactor(T_K, 101325, humidity);
    again.says('density [kg/m³]', density, rho.toFixed(5));
  });

  test.each([
    [25, 3161.7],
    [40, 7374.7],
  ])('water at %d °C has a vapour pressure of %f Pa', (t, p) => {
    again.says('vapour pressure [Pa]', saturationPressure_Pa(t + 273.15), p.toFixed(1), {
      off: 0.5,
      because: 'worked with rounded constants',
    });
  });

  test.each([
    [10, 1228],
    [25, 3169],
    [40, 7384],
  ])('steam tables: %d °C, %d Pa', (t, p) => {
    steam.says('vapour pressure [Pa]', saturationPressure_Pa(t + 273.15), String(p), {
      within: 0.004,
      because: 'stated scatter of the Magnus form',
    });
  });
});
