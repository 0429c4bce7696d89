import { describe, test } from 'vitest';
import { nusseltTurbulent } from '../../../src/core/channel/nusseltTurbulent.ts';
import { published } from '../../helpers/published.ts';

const long = 1e15;

describe('Gnielinski 1976, long channel', () => {
  const again = published({
    source: 'gnielinski1976',
    where: 'the published form in a separate program, Pr 0.707',
    kind: 'worked again',
    methods: ['nusseltTurbulent'],
  });

  test.each([
    [3000, 10.038],
    [4000, 13.542],
    [5000, 16.692],
    [1e4, 29.965],
    [2e4, 51.652],
  ])('Re %d: %f', (reynolds, nusselt) => {
    again.says('Nusselt number', nusseltTurbulent(reynolds, 0.707, long), nusselt.toFixed(3));
  });
});

const dittusBoelter = published({
  source: 'Dittus & Boelter (heating), 0.023·Re^0.8·Pr^0.4',
  where: 'measured shrouded fins follow it (Thombre & Sukhatme, abstract)',
  kind: 'from memory',
  methods: ['nusseltTurbulent'],
});
test.each([1e4, 2e4, 5e4])('Re %d: the simple power law agrees', (reynolds) => {
  const simple = 0.023 * reynolds ** 0.8 * 0.707 ** 0.4;
  dittusBoelter.says('Nusselt number', nusseltTurbulent(reynolds, 0.707, long), simple.toPrecision(4), {
    within: 0.12,
    because: 'known difference of the two laws for gases',
  });
});

// Square duct 0.2 × 0.2 × 8 m, 0.15 m³/s, 80 °C in, walls 60 °C: leaves at 71.3 °C with 1316 W lost.
test('Çengel ex. 8-6: hot air through a square duct leaves at 71.3 °C', () => {
  const reynolds = (0.15 / 0.04) * (0.2 / 2.097e-5);
  const nusselt = nusseltTurbulent(reynolds, 0.7154, long);
  const ntu = ((nusselt * 0.02953) / 0.2) * ((0.8 * 8) / (0.15 * 0.9994 * 1008));
  const out_degC = 60 + 20 * Math.exp(-ntu);
  const cengel = published({
    source: 'cengel',
    where: 'ex. 8-6',
    kind: 'worked example',
    methods: ['nusseltTurbulent'],
  });
  cengel.says('Reynolds number', reynolds, '35765', { off: 5, because: 'the source rounds its viscosity' });
  cengel.says('temperature at the end [°C]', out_degC, '71.3', {
    off: 0.8,
    because: 'the book’s simple power law gives 12 % more heat transfer than Gnielinski here',
  });
});
