import { describe, expect, test } from 'vitest';
import { finBetweenPlates } from '../../../src/core/fins/finBetweenPlates.ts';
import { finEfficiency } from '../../../src/core/fins/finEfficiency.ts';
import { isothermalSinkResistance_KPerW } from '../../../src/core/fins/isothermalSinkResistance_KPerW.ts';
import { optimumForcedGap_m } from '../../../src/core/fins/optimumForcedGap_m.ts';
import { optimumForcedGapCrossing_m } from '../../../src/core/fins/optimumForcedGapCrossing_m.ts';
import { sinkAirConductance_WPerK } from '../../../src/core/fins/sinkAirConductance_WPerK.ts';
import { expectPublished } from '../../helpers/published.ts';

// Independent computation: the corrected height stands in for a tip in the open; beside it the exact convective tip.
describe('Straight fins with their tip in the open', () => {
  test.each([
    [30, 200, 1, 20, '0.95999', 0.959992],
    [50, 200, 1, 30, '0.86923', null],
    [100, 180, 0.8, 25, '0.77989', 0.779886],
    [25, 167, 1.5, 40, '0.90243', null],
  ])('h %d, k %d, %f mm × %d mm: %s', (h, k, t_mm, H_mm, printed, exact) => {
    const efficiency = finEfficiency(h, k, t_mm * 1e-3, (H_mm + t_mm / 2) * 1e-3);
    expectPublished(efficiency, printed);
    // The corrected height is itself an approximation of the tip, good to 5 ppm here.
    if (exact !== null) expect(Math.abs(efficiency / exact - 1)).toBeLessThan(5e-6);
  });

  test('without correction the first is 0.96183', () => {
    expectPublished(finEfficiency(30, 200, 1e-3, 20e-3), '0.96183');
  });
});

// Holman, Heat Transfer (SI), ex. 2.8, through a public textbook companion.
test('Holman ex. 2.8: a fin of 3 × 75 mm, 300 °C in 50 °C, gives 360 W per metre', () => {
  const corrected_m = 76.5e-3;
  const heat_WPerM = finEfficiency(10, 200, 3e-3, corrected_m) * 10 * 2 * corrected_m * 250;
  expectPublished(heat_WPerM, '360', {
    within: 1 / 360,
    because: 'the companion prints it rounded, to within 1 W',
  });
});

// Independent computation: scipy 1.10.1, the fin equation by finite differences, 20 000 cells, plates at 1 and 0.
describe('A fin between two plates', () => {
  const out = new Float64Array(2);
  test.each([
    [30, 200, 1e-3, 40e-3, 50e-3, '0.057710', '0.231066'],
    [120, 160, 0.5e-3, 60e-3, 40e-3, '0.162637', '0.0131253'],
  ])('h %d, k %d, %f × %f × %f m: %s W/K to the air, %s W/K across', (h, k, t, H, L, air, across) => {
    finBetweenPlates(out, h, k, t, H, L, true);
    expectPublished(out[0] as number, air);
    expectPublished(out[1] as number, across);
  });
});

// Independent computation; effectiveness of one stream as in Incropera, ch. 11.
describe('A sink at one temperature whose air warms up', () => {
  test.each([
    [0.8, 2.38, '0.28547', '1.47183'],
    [2, 2, '0.63212', '0.79099'],
    [5, 1, '0.99326', '1.00678'],
  ])('UA %f, ṁc_p %f W/K: ε %s, %s K/W', (UA, capacity, effectiveness, R) => {
    expectPublished(isothermalSinkResistance_KPerW(UA, capacity), R);
    expectPublished(1 / (capacity * isothermalSinkResistance_KPerW(UA, capacity)), effectiveness);
    expectPublished(1 / UA + 1 / sinkAirConductance_WPerK(UA, capacity), R);
  });

  test.each([
    [0.34, -0.8],
    [1, -5],
    [5, -30],
  ])('half the warming as a resistance is wrong by %f NTU: %d %%', (ntu, percent) => {
    const shortcut = 1 / ntu + 1 / 2;
    const error = 100 * (shortcut / isothermalSinkResistance_KPerW(ntu, 1) - 1);
    expect(Math.abs(error - percent)).toBeLessThan(0.55); // printed as whole per cent
  });
});

// Bejan & Sciubba 1992 for the scaling; 2.73 from memory, 3.031 an independent boundary-layer optimum (Pr 0.72).
describe('Best gap at 20 Pa over 50 mm in air of 25 °C (Be 1.240·10⁸)', () => {
  const mu_PaS = 1.8372e-5;
  const diffusivity_m2PerS = 2.1943e-5;

  test('Be itself', () => expectPublished((20 * 0.05 ** 2) / (mu_PaS * diffusivity_m2PerS), '1.240e8'));
  test('1.293 mm where two limits cross', () =>
    expectPublished(1e3 * optimumForcedGapCrossing_m(0.05, 20, mu_PaS, diffusivity_m2PerS), '1.293'));
  test('1.436 mm by the full solution', () =>
    expectPublished(1e3 * optimumForcedGap_m(0.05, 20, mu_PaS, diffusivity_m2PerS), '1.436'));
});
