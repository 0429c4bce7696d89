import { describe, expect, test } from 'vitest';
import { radiationCoefficient_WPerM2K } from '../../../src/core/radiation/radiationCoefficient_WPerM2K.ts';
import { radiationCoefficientAtMean_WPerM2K } from '../../../src/core/radiation/radiationCoefficientAtMean_WPerM2K.ts';
import { radiationFlux_WPerM2 } from '../../../src/core/radiation/radiationFlux_WPerM2.ts';

// Separate computation with the CODATA constant.
describe('Black surface of 75 °C in a room of 25 °C', () => {
  test('radiates 384.99 W/m²', () => {
    expect(radiationFlux_WPerM2(1, 348.15, 298.15)).toBeCloseTo(384.99, 2);
  });
  test('has a coefficient of 7.700 W/m²K', () => {
    expect(radiationCoefficient_WPerM2K(1, 348.15, 298.15)).toBeCloseTo(7.7, 3);
  });
});

// Lienhard, A Heat Transfer Textbook, ex. 2.8: 0.1 W, 1.33e-4 m², air 35 °C, h 13 W/m²K, ε 0.9.
describe('Lienhard ex. 2.8, cylindrical resistor in still air', () => {
  const air_K = 308.15;
  const temperatureAt_K = (radiation_WPerM2K: number) => air_K + 0.1 / (1.33e-4 * (13 + radiation_WPerM2K));

  test('the first pass of 73.7 °C gives 7.17 W/m²K at the mean temperature', () => {
    expect(radiationCoefficientAtMean_WPerM2K(0.9, (air_K + 273.15 + 73.7) / 2)).toBeCloseTo(7.17, 2);
  });

  test('and with it 72.3 °C', () => {
    expect(temperatureAt_K(7.17) - 273.15).toBeCloseTo(72.3, 1);
  });

  test('iterated on the exact coefficient it settles at 72.3 °C', () => {
    let T_K = air_K;
    for (let i = 0; i < 50; i++) T_K = temperatureAt_K(radiationCoefficient_WPerM2K(0.9, T_K, air_K));
    expect(T_K - 273.15).toBeCloseTo(72.3, 1);
  });
});
