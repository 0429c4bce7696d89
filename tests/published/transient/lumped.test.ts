import { describe, test } from 'vitest';
import { lumpedRise_K } from '../../../src/core/heat/lumpedRise_K.ts';
import { lumpedTime_s } from '../../../src/core/heat/lumpedTime_s.ts';
import { pulsePeak_K } from '../../../src/core/heat/pulsePeak_K.ts';
import { pulseValley_K } from '../../../src/core/heat/pulseValley_K.ts';
import { shortPulseRise_K } from '../../../src/core/heat/shortPulseRise_K.ts';
import { timeConstant_s } from '../../../src/core/heat/timeConstant_s.ts';
import type { SourceKey } from '../../../src/core/sources.ts';
import { published } from '../../helpers/published.ts';

const example = (source: SourceKey, where: string, method: string) =>
  published({ source, where, kind: 'worked example', methods: [method] });
const hand = (...methods: string[]) =>
  published({ source: 'incropera', where: 'worked by hand', kind: 'worked again', methods });

// The resistor of ex. 2.8, ρ 2000, c 700, 10 × ⌀3.6 mm, h 18.44 W/m²K.
test('Lienhard ex. 2.9: three time constants of the resistor are 174.3 s', () => {
  const C_JPerK = 2000 * 700 * (Math.PI / 4) * 3.6e-3 ** 2 * 10e-3;
  const found = 3 * timeConstant_s(1 / (18.44 * 1.33e-4), C_JPerK);
  example('lienhard', 'ex. 2.9', 'timeConstant').says('time [s]', found, '174.3');
});

// Thermocouple bead, h 400, ρ 8500, c 400.
describe('Incropera ex. 5.1, thermocouple bead', () => {
  test('a bead of 0.706 mm has a time constant of 1 s', () => {
    const D_m = 0.706e-3;
    const C_JPerK = 8500 * 400 * (Math.PI / 6) * D_m ** 3;
    const found = timeConstant_s(1 / (400 * Math.PI * D_m ** 2), C_JPerK);
    example('incropera', 'ex. 5.1', 'timeConstant').says('time constant [s]', found, '1.000');
  });

  test('it reads 199 of 200 °C after 5.16 s', () => {
    example('incropera', 'ex. 5.1', 'lumpedTime').says('time [s]', lumpedTime_s(1, 175, 1), '5.16');
  });
});

describe('10 W through 3 K/W with a time constant of 120 s', () => {
  test.each([
    [60, 11.8041],
    [120, 18.9636],
  ])('after %f s the rise is %f K', (time_s, printed_K) => {
    hand('lumpedRise').says('temperature rise [K]', lumpedRise_K(10, 3, 120, time_s), printed_K.toFixed(4));
  });
});

test('10 W for 10 s in every 40 s through 8 K/W, 25 s: peak 33.0463 K, valley 9.9534 K', () => {
  const train = { power_W: 10, R_KPerW: 8, tau_s: 25, on_s: 10, period_s: 40 };
  hand('pulsePeak').says('peak [K]', pulsePeak_K(train), '33.0463');
  hand('pulseValley').says('valley [K]', pulseValley_K(train), '9.9534');
});

test('1 W/mm² for 1 ms warms the face of alumina by 3.7068 K', () => {
  const alumina = { k_WPerMK: 27, rho_kgPerM3: 3900, cp_JPerKgK: 880 };
  const carslaw = published({
    source: 'carslawJaeger1959',
    where: 'semi-infinite solid, worked by hand',
    kind: 'from memory',
    methods: ['shortPulseRise'],
  });
  const found = shortPulseRise_K({ flux_WPerM2: 1e6, time_s: 1e-3, ...alumina });
  carslaw.says('temperature rise [K]', found, '3.7068');
});
