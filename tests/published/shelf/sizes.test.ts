import { describe, expect, test } from 'vitest';
import { expectPublished } from '../../helpers/published.ts';
import { shelfValue } from '../../helpers/shelfValue.ts';

describe('knutsson.dk, size codes of chip parts', () => {
  test.each([
    ['0603 (1608 metric)', '1.6', '0.8', '0.45'],
    ['0805 (2012 metric)', '2.0', '1.25', '0.5'],
    ['1206 (3216 metric)', '3.2', '1.6', '0.55'],
    ['1210 (3225 metric)', '3.2', '2.5', '0.55'],
    ['1812 (4532 metric)', '4.5', '3.2', '0.55'],
    ['2010 (5025 metric)', '5.0', '2.5', '0.55'],
  ])('%s: %s × %s × %s mm', (name, length, width, height) => {
    expectPublished(shelfValue('chip', name, 'length_m').value * 1000, length);
    expectPublished(shelfValue('chip', name, 'width_m').value * 1000, width);
    expectPublished(shelfValue('chip', name, 'thickness_m').value * 1000, height);
  });

  test('2512: 6.4 × 3.2 × 0.55 mm here, 6.30 × 3.10 × 0.60 at interfacebus.com, both within the scatter told', () => {
    for (const [key, ...printed] of [
      ['length_m', 6.4, 6.3],
      ['width_m', 3.2, 3.1],
      ['thickness_m', 0.55, 0.6],
    ] as const) {
      const [low, high] = shelfValue('chip', '2512 (6332 metric)', key).scatter ?? [0, 0];
      for (const size_mm of printed) {
        expect(size_mm / 1000).toBeGreaterThanOrEqual(low);
        expect(size_mm / 1000).toBeLessThanOrEqual(high);
      }
    }
  });
});

describe('American gauge, table of ASTM B258, from memory', () => {
  test.each([
    [20, '0.0320'],
    [18, '0.0403'],
    [16, '0.0508'],
    [14, '0.0641'],
    [12, '0.0808'],
  ])('gauge %d is %s in', (number, printed_in) => {
    expectPublished(
      shelfValue('thickness', `Gauge ${number}, non-ferrous`, 'sheet_m').value / 0.0254,
      printed_in,
    );
  });
});
