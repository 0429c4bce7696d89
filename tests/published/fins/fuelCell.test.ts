import { describe, test } from 'vitest';
import { parallelResistance_KPerW } from '../../../src/core/conduction/parallelResistance_KPerW.ts';
import { slabResistance_KPerW } from '../../../src/core/conduction/slabResistance_KPerW.ts';
import { finBetweenPlates } from '../../../src/core/fins/finBetweenPlates.ts';
import { finEfficiency } from '../../../src/core/fins/finEfficiency.ts';
import { overallEfficiency } from '../../../src/core/fins/overallEfficiency.ts';
import { radiationCoefficient_WPerM2K } from '../../../src/core/radiation/radiationCoefficient_WPerM2K.ts';
import { expectPublished } from '../../helpers/published.ts';

// Incropera, DeWitt, Bergman & Lavine, 6th ed., through a public textbook companion: a fuel cell of 50 × 50 mm that gives
// 11.25 W of heat in air of 25 °C, bare (ex. 1.4) and in a finned sink on both faces (ex. 3.11).

const width_m = 0.05;
const faces_m2 = 2 * width_m * width_m;
const heat_W = 11.25;

test('Incropera ex. 1.4: bare, ε 0.88, h = 10.9·V^0.8, needs 9.4 m/s to stay at 56.4 °C', () => {
  const radiation_WPerM2K = 0.88 * radiationCoefficient_WPerM2K(329.4, 298);
  const h_WPerM2K = heat_W / (faces_m2 * 31.4) - radiation_WPerM2K;
  expectPublished((h_WPerM2K / 10.9) ** (1 / 0.8), '9.4');
});

describe('Incropera ex. 3.11: 22 fins of 1 × 8 mm on plates of 2 mm, contact of 1e-3 m²K/W, h 19.1', () => {
  const thickness_m = 1e-3;
  const length_m = 8e-3;
  const count = 22;
  // The edges of a fin count in the book: its perimeter is 2(w + t), as if h were larger by 1 + t/w.
  const h_WPerM2K = 19.1 * (1 + thickness_m / width_m);
  const out = new Float64Array(2);
  finBetweenPlates(out, h_WPerM2K, 200, thickness_m, length_m, width_m, false);
  const fin_KPerW = 1 / (out[0] as number);
  const bare_KPerW = 1 / (19.1 * (faces_m2 - count * thickness_m * width_m));
  const contact_KPerW = 1e-3 / faces_m2;
  const plate_KPerW = slabResistance_KPerW(2e-3, 200, faces_m2);
  const surface_KPerW = parallelResistance_KPerW(fin_KPerW / count, bare_KPerW);

  test('one fin has 64.43 K/W', () => expectPublished(fin_KPerW, '64.43'));
  test('the contact 0.200', () => expectPublished(contact_KPerW, '0.200'));
  test('the plates 0.002', () => expectPublished(plate_KPerW, '0.002'));
  test('the finned surface 2.404', () => expectPublished(surface_KPerW, '2.404'));

  test('the same by the overall surface efficiency', () => {
    const fins_m2 = count * 2 * width_m * length_m;
    const all_m2 = fins_m2 + faces_m2 - count * thickness_m * width_m;
    const efficiency = overallEfficiency(fins_m2, all_m2, finEfficiency(19.1, 200, thickness_m, length_m));
    expectPublished(1 / (efficiency * 19.1 * all_m2), '2.404', {
      within: 0.017,
      because: 'the edges of the fins, 2 % of their area, are left out here',
    });
  });

  test('all of it 2.606', () => expectPublished(surface_KPerW + contact_KPerW + plate_KPerW, '2.606'));
  test('and the cell settles at 54.3 °C', () =>
    expectPublished(25 + heat_W * (surface_KPerW + contact_KPerW + plate_KPerW), '54.3'));
});
