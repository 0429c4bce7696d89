import { describe, expect, test } from 'vitest';
import { elenbaas } from '../../../src/core/freeConvection/elenbaas.ts';
import { nusseltChannelBarCohenRohsenow1984 } from '../../../src/core/freeConvection/nusseltChannelBarCohenRohsenow1984.ts';
import { nusseltChannelElenbaas1942 } from '../../../src/core/freeConvection/nusseltChannelElenbaas1942.ts';
import { nusseltChannelOneSideBarCohenRohsenow1984 } from '../../../src/core/freeConvection/nusseltChannelOneSideBarCohenRohsenow1984.ts';
import { NUSSELT_AT_OPTIMUM_GAP, optimumGap_m } from '../../../src/core/freeConvection/optimumGap_m.ts';
import { buoyancy_PerM3K, rayleigh } from '../../../src/core/freeConvection/rayleigh.ts';

// The published forms (Bar-Cohen & Rohsenow 1984; Elenbaas 1942) worked in a separate program.
describe('Vertical channels', () => {
  test.each([
    [1, 0.04156, 0.04167, 0.08251],
    [10, 0.38724, 0.40719, 0.65253],
    [50, 1.25323, 1.2451, 1.4682],
    [100, 1.70276, 1.66917, 1.82059],
    [1000, 3.3072, 3.32779, 3.31504],
  ])('El %d: both sides %f, after Elenbaas %f, one side %f', (El, symmetric, measured, oneSide) => {
    expect(nusseltChannelBarCohenRohsenow1984(El)).toBeCloseTo(symmetric, 5);
    expect(nusseltChannelElenbaas1942(El)).toBeCloseTo(measured, 5);
    expect(nusseltChannelOneSideBarCohenRohsenow1984(El)).toBeCloseTo(oneSide, 5);
  });

  test('Elenbaas’ measured curve and the composite agree within their 10 %', () => {
    for (const El of [1, 3, 10, 30, 100, 300, 1000]) {
      const ratio = nusseltChannelElenbaas1942(El) / nusseltChannelBarCohenRohsenow1984(El);
      expect(Math.abs(ratio - 1)).toBeLessThan(0.1);
    }
  });
});

// Çengel, ex. 9-3: 0.12 m wide, 0.18 m high plate with fins 1 mm × 24 mm, 80 °C in 30 °C.
describe('Çengel ex. 9-3, best fin gap in still air', () => {
  const nu_m2PerS = 1.847e-5;
  const Ra = rayleigh(buoyancy_PerM3K(1 / 328, nu_m2PerS, nu_m2PerS / 0.7215), 50, 0.18);
  const gap_m = optimumGap_m(0.18, 1.8445e7);
  const h_WPerM2K = (NUSSELT_AT_OPTIMUM_GAP * 0.02772) / gap_m;
  const fins = Math.floor(0.12 / (gap_m + 1e-3));

  test('the Rayleigh number is 1.8445e7', () => {
    const within = 0.001; // the source rounds g to 9.81 m/s²
    expect(Math.abs(Ra / 1.8445e7 - 1)).toBeLessThan(within);
  });
  test('the gap is 7.45 mm', () => expect(gap_m * 1e3).toBeCloseTo(7.45, 2));
  test('14 fins fit', () => expect(fins).toBe(14));
  test('the coefficient is 4.86 W/m²K', () => expect(h_WPerM2K).toBeCloseTo(4.86, 2));
  test('the fins give 29.4 W', () => {
    const within = 0.05; // half a unit of the last printed digit
    expect(Math.abs(h_WPerM2K * 2 * fins * 0.18 * 0.024 * 50 - 29.4)).toBeLessThan(within);
  });
});

// Our own sink: 50 mm high, 3.9 mm gaps, 75 °C in 25 °C, air at 50 °C (k 0.02803, ν 1.7884e-5, α 2.5491e-5);
// worked in a separate program.
describe('A sink of 50 mm with 3.9 mm gaps whose fan has stopped', () => {
  const buoyancy = buoyancy_PerM3K(1 / 323.15, 1.7884393e-5, 2.5491319e-5);
  const El = elenbaas(rayleigh(buoyancy, 50, 3.9e-3), 3.9e-3, 50e-3);
  const nusselt = nusseltChannelBarCohenRohsenow1984(El);

  test('has an Elenbaas number of 15.40', () => expect(El).toBeCloseTo(15.4, 2));
  test('has a Nusselt number of .5625 and 4.0425 W/m²K', () => {
    expect(nusselt).toBeCloseTo(0.5625, 4);
    expect((nusselt * 0.02803045) / 3.9e-3).toBeCloseTo(4.0425, 4);
  });
  test('would be best with gaps of 5.34 mm', () => {
    expect(optimumGap_m(50e-3, rayleigh(buoyancy, 50, 50e-3)) * 1e3).toBeCloseTo(5.34, 2);
  });
});
