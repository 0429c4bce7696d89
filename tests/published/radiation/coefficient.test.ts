import { describe, test } from 'vitest';
import { radiationCoefficient_WPerM2K } from '../../../src/core/radiation/radiationCoefficient_WPerM2K.ts';
import { radiationCoefficientAtMean_WPerM2K } from '../../../src/core/radiation/radiationCoefficientAtMean_WPerM2K.ts';
import { radiationFlux_WPerM2 } from '../../../src/core/radiation/radiationFlux_WPerM2.ts';
import { published } from '../../helpers/published.ts';

describe('Black surface of 75 °C in a room of 25 °C', () => {
  const program = published({
    source: 'stefanBoltzmann',
    where: 'with the CODATA constant in a separate program',
    kind: 'worked again',
    methods: ['radiationFlux', 'radiationCoefficient'],
  });

  test('radiates 384.99 W/m²', () => {
    program.says('heat flux [W/m²]', radiationFlux_WPerM2(1, 348.15, 298.15), '384.99');
  });
  test('has a coefficient of 7.700 W/m²K', () => {
    const found = radiationCoefficient_WPerM2K(1, 348.15, 298.15);
    program.says('heat transfer coefficient [W/(m²·K)]', found, '7.700');
  });
});

// 0.1 W, 1.33e-4 m², air 35 °C, h 13 W/m²K, ε 0.9.
describe('Lienhard ex. 2.8, cylindrical resistor in still air', () => {
  const lienhard = published({
    source: 'lienhard',
    where: 'ex. 2.8',
    kind: 'worked example',
    methods: ['radiationCoefficientAtMean', 'radiationCoefficient'],
  });
  const air_K = 308.15;
  const temperatureAt_K = (radiation_WPerM2K: number) => air_K + 0.1 / (1.33e-4 * (13 + radiation_WPerM2K));

  test('the first pass of 73.7 °C gives 7.17 W/m²K at the mean temperature', () => {
    const found = radiationCoefficientAtMean_WPerM2K(0.9, (air_K + 273.15 + 73.7) / 2);
    lienhard.says('heat transfer coefficient [W/(m²·K)]', found, '7.17');
  });

  test('and with it 72.3 °C', () => {
    lienhard.says('temperature [°C]', temperatureAt_K(7.17) - 273.15, '72.3');
  });

  test('iterated on the exact coefficient it settles at 72.3 °C', () => {
    let T_K = air_K;
    for (let i = 0; i < 50; i++) T_K = temperatureAt_K(radiationCoefficient_WPerM2K(0.9, T_K, air_K));
    lienhard.says('temperature [°C]', T_K - 273.15, '72.3');
  });
});
