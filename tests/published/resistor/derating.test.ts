import { describe, test } from 'vitest';
import { allowedPower_W, allowedTemperature_K } from '../../../src/core/resistor/allowedPower_W.ts';
import { chipLateralResistance_KPerW } from '../../../src/core/resistor/chipLateralResistance_KPerW.ts';
import { resistanceDrift } from '../../../src/core/resistor/resistanceDrift.ts';
import { expectPublished } from '../../helpers/published.ts';

const kelvin = 273.15;

// Data sheets of film chips; full power up to 70 °C and none from 155 °C is the convention (from memory).
describe('derating lines in data sheets of film chips', () => {
  test('one part may have 35 % at 125 °C', () => {
    expectPublished(allowedPower_W(125 + kelvin, 1, 70 + kelvin, 155 + kelvin), '0.35');
  });

  test('another of 0.75 W may have 0.50 W at 100 °C', () => {
    expectPublished(allowedPower_W(100 + kelvin, 0.75, 70 + kelvin, 155 + kelvin), '0.50', {
      within: 0.035,
      because: 'read off a printed line; the convention gives 0.485 W',
    });
  });

  test('half power is allowed up to 112.5 °C, half way down the line', () => {
    expectPublished(allowedTemperature_K(0.5, 1, 70 + kelvin, 155 + kelvin) - kelvin, '112.5');
  });
});

// Worked by hand: an evenly heated strip between two cold ends has a mean of q·L²/(12k) (Incropera ch. 3, from memory).
test('an alumina chip of 6.35 × 3.15 × 0.6 mm at 27 W/mK has 10.37 K/W to its terminals', () => {
  expectPublished(chipLateralResistance_KPerW(6.35e-3, 27, 3.15e-3, 0.6e-3), '10.37');
});

// IEC 60751 from memory: platinum, A = 3.9083e-3 and B = −5.775e-7 over 0 °C; 138.51 Ω of 100 Ω at 100 °C.
test('platinum of 100 Ω at 0 °C has 138.51 Ω at 100 °C and 157.33 Ω at 150 °C', () => {
  expectPublished(100 * (1 + resistanceDrift(100, 3.9083e-3, -5.775e-7)), '138.51');
  expectPublished(100 * (1 + resistanceDrift(150, 3.9083e-3, -5.775e-7)), '157.33');
});
