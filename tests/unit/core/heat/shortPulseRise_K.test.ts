import { expect, test } from 'vitest';
import { shortPulseRise_K } from '../../../../src/core/heat/shortPulseRise_K.ts';

const alumina = { k_WPerMK: 27, rho_kgPerM3: 3900, cp_JPerKgK: 880 };

test('agrees with a thick layer cut into slices', () => {
  const slices = 400;
  const slice_m = 2e-6;
  const C = alumina.rho_kgPerM3 * alumina.cp_JPerKgK * slice_m;
  const G = alumina.k_WPerMK / slice_m;
  const dt_s = (0.25 * C) / G;
  const steps = Math.round(1e-3 / dt_s);
  const T = new Float64Array(slices);
  for (let s = 0; s < steps; s++) {
    let entering = 1e6;
    for (let i = 0; i < slices; i++) {
      const leaving = i + 1 < slices ? G * ((T[i] ?? 0) - (T[i + 1] ?? 0)) : 0;
      T[i] = (T[i] ?? 0) + ((entering - leaving) * dt_s) / C;
      entering = leaving;
    }
  }
  const surface_K = (T[0] ?? 0) + (1e6 * slice_m) / (2 * alumina.k_WPerMK);
  const rise_K = shortPulseRise_K({ flux_WPerM2: 1e6, time_s: steps * dt_s, ...alumina });
  const within = 0.01; // slices of 2 µm and explicit steps
  expect(Math.abs(surface_K / rise_K - 1)).toBeLessThan(within);
});

test('four times as long is twice as warm', () => {
  const short = shortPulseRise_K({ flux_WPerM2: 1e6, time_s: 1e-3, ...alumina });
  expect(shortPulseRise_K({ flux_WPerM2: 1e6, time_s: 4e-3, ...alumina }) / short).toBeCloseTo(2, 12);
});
