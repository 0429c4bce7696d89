import { describe, test } from 'vitest';
import { allowedPower_W } from '../../../src/core/resistor/allowedPower_W.ts';
import { published } from '../../helpers/published.ts';

const celsius = (T_degC: number) => T_degC + 273.15;

// Full power up to 70 °C, none at 155 °C.
describe('the straight derating line of film resistors', () => {
  const from = (where: string, kind: 'handbook' | 'worked again') =>
    published({ source: 'chipConvention', where, kind, methods: ['derating'] });
  const hand = from('worked by hand', 'worked again');

  test('leaves 35 % at 125 °C (data sheet of a film part)', () => {
    const left = allowedPower_W(celsius(125), 1, celsius(70), celsius(155));
    from('data sheet of a film part', 'handbook').says('share of the power', left, '0.35');
  });

  test('leaves 0.3529 there to four digits (worked by hand)', () => {
    const left = allowedPower_W(celsius(125), 1, celsius(70), celsius(155));
    hand.says('share of the power', left, '0.3529');
  });

  test('leaves 0.50 W of 0.75 W at 100 °C (data sheet of a chip)', () => {
    const left_W = allowedPower_W(celsius(100), 0.75, celsius(70), celsius(155));
    from('data sheet of a chip', 'handbook').says('power [W]', left_W, '0.50', {
      within: 0.03,
      because: 'the sheet rounds 0.485 W up to a size of its series',
    });
    hand.says('power [W]', left_W, '0.485');
  });
});
