import { describe, expect, test } from 'vitest';
import { parallelResistance_KPerW } from '../../../src/core/conduction/parallelResistance_KPerW.ts';
import { slabResistance_KPerW } from '../../../src/core/conduction/slabResistance_KPerW.ts';
import { airPower_W } from '../../../src/core/fan/fanLaws.ts';
import { finBetweenPlates } from '../../../src/core/fins/finBetweenPlates.ts';
import { finEfficiency } from '../../../src/core/fins/finEfficiency.ts';
import { overallEfficiency } from '../../../src/core/fins/overallEfficiency.ts';
import { radiationFlux_WPerM2 } from '../../../src/core/radiation/radiationFlux_WPerM2.ts';
import { brentRoot } from '../../../src/core/solve/brentRoot.ts';
import { published } from '../../helpers/published.ts';

const cell_W = 11.25;
const face_m2 = 0.05 * 0.05;

const example = (where: string, methods: string[]) =>
  published({ source: 'incropera', where, kind: 'worked example', methods });

// Incropera, ex. 3.11: fuel cell 50 × 50 mm between two bases with eleven fins of 1 × 8 mm each, 19.1 W/m²K, 25 °C.
describe('Incropera ex. 3.11, fins on both faces of a fuel cell', () => {
  const fins = example('ex. 3.11', ['finEfficiency', 'overallEfficiency', 'slabResistance']);
  const h = 19.1;
  const [width_m, thickness_m, height_m] = [0.05, 1e-3, 8e-3];
  // The source counts the narrow edges of a fin too: perimeter 2(w + t) on a section w·t is a thinner fin of two faces.
  const perimeter_m = 2 * (width_m + thickness_m);
  const sameRatio_m = (2 * width_m * thickness_m) / perimeter_m;
  const efficiency = finEfficiency(h, 200, sameRatio_m, height_m);
  const oneFin_WPerK = efficiency * h * perimeter_m * height_m;
  const fins_m2 = 22 * perimeter_m * height_m;
  const bare_m2 = 2 * face_m2 - 22 * width_m * thickness_m;
  const whole_WPerK = h * (fins_m2 + bare_m2) * overallEfficiency(fins_m2, fins_m2 + bare_m2, efficiency);
  const contact_KPerW = parallelResistance_KPerW(1e-3 / face_m2, 1e-3 / face_m2);
  const base_KPerW = slabResistance_KPerW(2e-3, 200, 2 * face_m2);
  const total_KPerW = contact_KPerW + base_KPerW + 1 / whole_WPerK;

  test('one fin has 64.43 K/W', () => fins.says('resistance of one fin [K/W]', 1 / oneFin_WPerK, '64.43'));
  test('the fin between plates, open at its tip, says the same', () => {
    const out = new Float64Array(2);
    finBetweenPlates(out, h, 200, sameRatio_m, height_m, perimeter_m / 2, false);
    expect(out[0]).toBeCloseTo(oneFin_WPerK, 12);
  });
  test('contact and base have 0.200 and 0.002 K/W', () => {
    fins.says('resistance of the contact [K/W]', contact_KPerW, '0.200');
    fins.says('resistance of the base [K/W]', base_KPerW, '0.002');
  });
  test('fins and bare stretches have 2.404 K/W, all together 2.606 K/W', () => {
    fins.says('resistance of the fins [K/W]', 1 / whole_WPerK, '2.404');
    fins.says('resistance of all [K/W]', total_KPerW, '2.606');
  });
  test('the cell settles at 54.3 °C', () => fins.says('temperature [°C]', 25 + cell_W * total_KPerW, '54.3'));
  test('a fan for 9.4 m/s through 50 × 20 mm at 1000 Pa takes more than the 9 W the cell gives: −0.40 W', () => {
    const left_W = 9 - airPower_W(9.4 * 0.05 * 0.02, 1000);
    example('ex. 3.11', ['fanLaws']).says('power left [W]', left_W, '-0.40');
  });
});

// Incropera, ex. 1.4: the same cell bare, both faces, emissivity 0.88, 56.4 °C in 25 °C, h = 10.9·V^0.8.
describe('Incropera ex. 1.4, the same cell without fins', () => {
  test('needs 9.40 m/s', () => {
    const [T_K, room_K] = [56.4 + 273.15, 25 + 273.15];
    const left_W = (v: number) =>
      2 * face_m2 * (10.9 * v ** 0.8 * (T_K - room_K) + radiationFlux_WPerM2(0.88, T_K, room_K)) - cell_W;
    const found = brentRoot(left_W, 0.1, 100, 1e-12);
    example('ex. 1.4', ['radiationFlux']).says('speed [m/s]', found.ok ? found.root : Number.NaN, '9.40', {
      within: 0.01,
      because: 'the source rounds its temperatures to whole kelvins before the fourth powers',
    });
  });
});
