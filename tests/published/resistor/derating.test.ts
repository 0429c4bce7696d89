import { describe, test } from 'vitest';
import { allowedPower_W } from '../../../src/core/resistor/allowedPower_W.ts';
import { expectPublished } from '../../helpers/published.ts';

const celsius = (T_degC: number) => T_degC + 273.15;

// Data sheets of film parts, full power up to 70 °C, none at 155 °C.
describe('the straight derating line of film resistors', () => {
  test('leaves 35 % at 125 °C (data sheet of a film part)', () => {
    expectPublished(allowedPower_W(celsius(125), 1, celsius(70), celsius(155)), '0.35');
  });

  test('leaves 0.3529 there to four digits (worked by hand)', () => {
    expectPublished(allowedPower_W(celsius(125), 1, celsius(70), celsius(155)), '0.3529');
  });

  test('leaves 0.50 W of 0.75 W at 100 °C (data sheet of a chip)', () => {
    const left_W = allowedPower_W(celsius(100), 0.75, celsius(70), celsius(155));
    expectPublished(left_W, '0.50', {
      within: 0.03,
      because: 'the sheet rounds 0.485 W up to a size of its series',
    });
    expectPublished(left_W, '0.485');
  });
});
