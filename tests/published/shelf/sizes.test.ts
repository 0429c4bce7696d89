import { describe, test } from 'vitest';
import { published } from '../../helpers/published.ts';
import { shelfValue } from '../../helpers/shelfValue.ts';

describe('knutsson.dk, size codes of chip parts', () => {
  const sizes = published({ source: 'chipSizeTable', kind: 'handbook' });

  test.each([
    ['0603 (1608 metric)', '1.6', '0.8', '0.45'],
    ['0805 (2012 metric)', '2.0', '1.25', '0.5'],
    ['1206 (3216 metric)', '3.2', '1.6', '0.55'],
    ['1210 (3225 metric)', '3.2', '2.5', '0.55'],
    ['1812 (4532 metric)', '4.5', '3.2', '0.55'],
    ['2010 (5025 metric)', '5.0', '2.5', '0.55'],
  ])('%s: %s × %s × %s mm', (name, length, width, height) => {
    sizes.says('length [mm]', shelfValue('chip', name, 'length_m').value * 1000, length);
    sizes.says('width [mm]', shelfValue('chip', name, 'width_m').value * 1000, width);
    sizes.says('height [mm]', shelfValue('chip', name, 'thickness_m').value * 1000, height);
  });

  test('2512: 6.4 × 3.2 × 0.55 mm here, 6.30 × 3.10 × 0.60 at interfacebus.com, both within the scatter told', () => {
    const other = published({ source: 'interfacebus.com, sizes of chip parts', kind: 'handbook' });
    for (const [key, quantity, here, there] of [
      ['length_m', 'length [mm]', '6.4', '6.30'],
      ['width_m', 'width [mm]', '3.2', '3.10'],
      ['thickness_m', 'height [mm]', '0.55', '0.60'],
    ] as const) {
      const { value, scatter } = shelfValue('chip', '2512 (6332 metric)', key);
      const [low, high] = scatter ?? [0, 0];
      const told = {
        off: [1000 * (value - high) - 1e-12, 1000 * (value - low) + 1e-12],
        because: 'the scatter told beside the value',
      } as const;
      sizes.says(quantity, value * 1000, here, told);
      other.says(quantity, value * 1000, there, told);
    }
  });
});

describe('American gauge, table of ASTM B258, from memory', () => {
  const gauge = published({ source: 'wireGauge', where: 'table', kind: 'from memory' });

  test.each([
    [20, '0.0320'],
    [18, '0.0403'],
    [16, '0.0508'],
    [14, '0.0641'],
    [12, '0.0808'],
  ])('gauge %d is %s in', (number, printed_in) => {
    const { value } = shelfValue('thickness', `Gauge ${number}, non-ferrous`, 'sheet_m');
    gauge.says('thickness [in]', value / 0.0254, printed_in);
  });
});
