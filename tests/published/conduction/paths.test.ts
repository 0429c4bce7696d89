import { describe, test } from 'vitest';
import { bondResistance_KPerW } from '../../../src/core/conduction/bondResistance_KPerW.ts';
import { longLeadResistance_KPerW } from '../../../src/core/conduction/longLeadResistance_KPerW.ts';
import { parallelResistance_KPerW } from '../../../src/core/conduction/parallelResistance_KPerW.ts';
import { slabResistance_KPerW } from '../../../src/core/conduction/slabResistance_KPerW.ts';
import { published } from '../../helpers/published.ts';

// Çengel, Heat and Mass Transfer, ex. 3-5: transistor on a copper plate, contact conductance 42 000 W/m²K on 8 cm².
describe('Çengel ex. 3-5, transistor on a copper plate', () => {
  const cengel = published({
    source: 'cengel',
    where: 'ex. 3-5',
    kind: 'worked example',
    methods: ['bondResistance', 'slabResistance'],
  });
  const contactOfOneFace_m2KPerW = 1 / 42_000 / 2;
  const contact_KPerW = bondResistance_KPerW(0, 386, 8e-4, 0, contactOfOneFace_m2KPerW);
  const plate_KPerW = slabResistance_KPerW(0.01, 386, 0.01);
  const air_KPerW = 1 / (25 * 0.01);
  const total_KPerW = contact_KPerW + plate_KPerW + air_KPerW;

  test('the way to the air is 4.0324 K/W', () =>
    cengel.says('thermal resistance [K/W]', total_KPerW, '4.0324'));
  test('it takes 12.40 W from 70 to 20 °C', () => cengel.says('power [W]', 50 / total_KPerW, '12.40'));
  test('0.369 K are lost in the contact', () =>
    cengel.says('temperature step [K]', (50 / total_KPerW) * contact_KPerW, '0.369'));
});

// Very long rods of 5 mm, 100 °C foot, 25 °C air, 100 W/m²K.
describe('Incropera ex. 3.9, very long rods', () => {
  const memory = published({
    source: 'incropera',
    where: 'ex. 3.9',
    kind: 'from memory',
    methods: ['longLeadResistance'],
  });
  test.each([
    ['copper', 398, 8.3],
    ['aluminium 2024', 180, 5.6],
    ['stainless steel 316', 14, 1.6],
  ])('%s at %f W/mK takes %f W', (_, k_WPerMK, printed_W) => {
    const perimeter_m = Math.PI * 5e-3;
    const section_m2 = (Math.PI / 4) * 5e-3 ** 2;
    const R_KPerW = longLeadResistance_KPerW(100, perimeter_m, k_WPerMK, section_m2);
    memory.says('power [W]', 75 / R_KPerW, printed_W.toFixed(1));
  });
});

describe('Heat leaving a resistor by more than one way', () => {
  const hand = (methods: string[]) =>
    published({ source: 'incropera', where: 'ch. 3, worked by hand', kind: 'worked again', methods });
  const parallel = hand(['parallelResistance']);
  const faces_KPerW = parallelResistance_KPerW(11.61, 19.5);

  test('11.61 and 19.5 K/W are 7.2772 K/W together', () =>
    parallel.says('thermal resistance [K/W]', faces_KPerW, '7.2772'));

  test('a third way of 60 K/W makes it 6.4901 K/W, shared .5590 / .3328 / .1082', () => {
    const all_KPerW = parallelResistance_KPerW(faces_KPerW, 60);
    parallel.says('thermal resistance [K/W]', all_KPerW, '6.4901');
    parallel.says('share of the first', all_KPerW / 11.61, '0.5590');
    parallel.says('share of the second', all_KPerW / 19.5, '0.3328');
    parallel.says('share of the third', all_KPerW / 60, '0.1082');
  });

  test('the alumina body of a 6.35 × 3.15 × 0.6 mm chip at 27 W/mK is 1.111 K/W', () => {
    const found = slabResistance_KPerW(0.6e-3, 27, 6.35e-3 * 3.15e-3);
    hand(['slabResistance']).says('thermal resistance [K/W]', found, '1.111');
  });
});
