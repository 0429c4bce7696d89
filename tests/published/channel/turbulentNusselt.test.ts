import { describe, expect, test } from 'vitest';
import { nusseltTurbulent } from '../../../src/core/channel/nusseltTurbulent.ts';

const long = 1e15;

// Gnielinski's form worked in a separate program, Pr 0.707.
describe('Gnielinski 1976, long channel', () => {
  test.each([
    [3000, 10.038],
    [4000, 13.542],
    [5000, 16.692],
    [1e4, 29.965],
    [2e4, 51.652],
  ])('Re %d: %f', (reynolds, nusselt) => {
    expect(nusseltTurbulent(reynolds, 0.707, long)).toBeCloseTo(nusselt, 3);
  });
});

// Dittus & Boelter (heating), 0.023·Re^0.8·Pr^0.4: from memory; measured shrouded fins follow it (Thombre & Sukhatme, abstract).
test.each([1e4, 2e4, 5e4])('Re %d: the simple power law agrees', (reynolds) => {
  const simple = 0.023 * reynolds ** 0.8 * 0.707 ** 0.4;
  const within = 0.12; // known difference of the two laws for gases
  expect(Math.abs(nusseltTurbulent(reynolds, 0.707, long) / simple - 1)).toBeLessThan(within);
});

// Çengel, ex. 8-6: square duct 0.2 × 0.2 × 8 m, 0.15 m³/s, 80 °C in, walls 60 °C: leaves at 71.3 °C with 1316 W lost.
// Read in a public textbook companion.
test('Çengel ex. 8-6: hot air through a square duct leaves at 71.3 °C', () => {
  const reynolds = (0.15 / 0.04) * (0.2 / 2.097e-5);
  const nusselt = nusseltTurbulent(reynolds, 0.7154, long);
  const ntu = ((nusselt * 0.02953) / 0.2) * ((0.8 * 8) / (0.15 * 0.9994 * 1008));
  const out_degC = 60 + 20 * Math.exp(-ntu);
  expect(reynolds).toBeCloseTo(35765, -1);
  const within = 0.8; // the book's simple power law gives 12 % more heat transfer than Gnielinski here
  expect(Math.abs(out_degC - 71.3)).toBeLessThan(within);
});
