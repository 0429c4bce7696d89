import { describe, expect, test } from 'vitest';
import { lumpedRise_K } from '../../../src/core/heat/lumpedRise_K.ts';
import { lumpedTime_s } from '../../../src/core/heat/lumpedTime_s.ts';
import { pulsePeak_K } from '../../../src/core/heat/pulsePeak_K.ts';
import { pulseValley_K } from '../../../src/core/heat/pulseValley_K.ts';
import { shortPulseRise_K } from '../../../src/core/heat/shortPulseRise_K.ts';
import { timeConstant_s } from '../../../src/core/heat/timeConstant_s.ts';

// Lienhard, A Heat Transfer Textbook, ex. 2.9: the resistor of ex. 2.8, ρ 2000, c 700, 10 × ⌀3.6 mm, h 18.44 W/m²K.
test('Lienhard ex. 2.9: three time constants of the resistor are 174.3 s', () => {
  const C_JPerK = 2000 * 700 * (Math.PI / 4) * 3.6e-3 ** 2 * 10e-3;
  expect(3 * timeConstant_s(1 / (18.44 * 1.33e-4), C_JPerK)).toBeCloseTo(174.3, 1);
});

// Incropera, ex. 5.1: thermocouple bead, h 400, ρ 8500, c 400.
describe('Incropera ex. 5.1, thermocouple bead', () => {
  test('a bead of 0.706 mm has a time constant of 1 s', () => {
    const D_m = 0.706e-3;
    const C_JPerK = 8500 * 400 * (Math.PI / 6) * D_m ** 3;
    expect(timeConstant_s(1 / (400 * Math.PI * D_m ** 2), C_JPerK)).toBeCloseTo(1, 3);
  });

  test('it reads 199 of 200 °C after 5.16 s', () => {
    expect(lumpedTime_s(1, 175, 1)).toBeCloseTo(5.16, 2);
  });
});

// Worked by hand.
describe('10 W through 3 K/W with a time constant of 120 s', () => {
  test.each([
    [60, 11.8041],
    [120, 18.9636],
  ])('after %f s the rise is %f K', (time_s, printed_K) => {
    expect(lumpedRise_K(10, 3, 120, time_s)).toBeCloseTo(printed_K, 4);
  });
});

// Worked by hand.
test('10 W for 10 s in every 40 s through 8 K/W, 25 s: peak 33.0463 K, valley 9.9534 K', () => {
  const train = { power_W: 10, R_KPerW: 8, tau_s: 25, on_s: 10, period_s: 40 };
  expect(pulsePeak_K(train)).toBeCloseTo(33.0463, 4);
  expect(pulseValley_K(train)).toBeCloseTo(9.9534, 4);
});

// Carslaw & Jaeger (from memory), semi-infinite solid, worked by hand.
test('1 W/mm² for 1 ms warms the face of alumina by 3.7068 K', () => {
  const alumina = { k_WPerMK: 27, rho_kgPerM3: 3900, cp_JPerKgK: 880 };
  expect(shortPulseRise_K({ flux_WPerM2: 1e6, time_s: 1e-3, ...alumina })).toBeCloseTo(3.7068, 4);
});
