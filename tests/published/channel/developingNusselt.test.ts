import { describe, expect, test } from 'vitest';
import { airProperties, createAirProperties } from '../../../src/core/air/airProperties.ts';
import { channelNusselt, prepareNusselt } from '../../../src/core/channel/channelNusselt.ts';
import { nusseltDeveloping, prepareDeveloping } from '../../../src/core/channel/nusseltDeveloping.ts';
import { nusseltPlatesDeveloping } from '../../../src/core/channel/nusseltPlatesDeveloping.ts';
import { nusseltPlatesStephan1959 } from '../../../src/core/channel/nusseltPlatesStephan1959.ts';
import { published } from '../../helpers/published.ts';

describe('Muzychka & Yovanovich 2004, on √A', () => {
  const again = published({
    source: 'muzychkaYovanovich2004',
    where: 'the published form (even wall temperature, mean) in a separate program, Pr 0.71',
    kind: 'worked again',
    methods: ['nusseltDeveloping'],
  });

  test.each([
    [1, 0.001, 23.318],
    [1, 0.01, 8.364],
    [0.25, 0.01, 9.365],
    [0.25, 0.1, 6.125],
    [0.1, 0.01, 12.034],
  ])('aspect %f, z* %f: %f', (aspect, zStar, nusselt) => {
    again.says(
      'mean Nusselt number',
      nusseltDeveloping(prepareDeveloping(aspect), zStar, 0.71),
      nusselt.toFixed(3),
    );
  });
});

const xStars = [5e-4, 1e-3, 5e-3, 0.01, 0.05, 0.1];

/** Channel one hydraulic diameter over `xStar` long at Re·Pr = 1: mean Nusselt number at that x*, laminar. */
function meanAt(aspect: number, xStar: number, prandtl: number): number {
  const hydraulic = (2 * aspect) / (1 + aspect);
  return channelNusselt(prepareNusselt(aspect, 1, xStar * hydraulic), 1 / prandtl, prandtl);
}

// Velocity developed: the limit of a large Prandtl number, here 1000.
describe('Graetz solution, temperature alone developing', () => {
  const graetz = published({
    source: 'ownComputation',
    where: 'Graetz eigenfunction expansion',
    kind: 'computed elsewhere',
    methods: ['nusseltDeveloping'],
  });
  const composite = {
    within: 0.09,
    because: 'known error of the composite in this limit: +7 % in the square, −9 % between plates',
  };

  test.each([
    [1, [18.09, 14.22, 8.164, 6.473, 4.032, 3.521]],
    [0.5, [18.79, 14.82, 8.591, 6.867, 4.461, 3.97]],
    [0.25, [20.26, 16.05, 9.507, 7.732, 5.456, 5.033]],
    [0.1, [21.78, 17.4, 10.565, 8.762, 6.7, 6.372]],
    [1e-4, [23.416, 18.752, 11.623, 9.825, 8.01, 7.776]], // plates
  ] as [number, number[]][])('aspect %f', (aspect, values) => {
    values.forEach((exact, i) => {
      const xStar = xStars[i] as number;
      graetz.says(
        `mean Nusselt number at x* ${xStar}`,
        meanAt(aspect, xStar, 1000),
        String(exact),
        composite,
      );
    });
  });
});

describe('Plates, velocity and temperature developing together', () => {
  const marched = (methods: string[]) =>
    published({
      source: 'ownComputation',
      where: 'boundary-layer marching, Pr 0.71, the coarser of two',
      kind: 'computed elsewhere',
      methods,
    });
  const rows: [number, number][] = [
    [5e-4, 34.54],
    [1e-3, 25.38],
    [2e-3, 18.93],
    [5e-3, 13.32],
    [0.01, 10.68],
    [0.02, 9.127],
    [0.05, 8.156],
    [0.1, 7.815],
    [0.2, 7.611],
  ];

  test.each(rows)('x* %f: %f', (xStar, exact) => {
    const printed = String(exact);
    marched(['nusseltPlatesDeveloping']).says(
      'mean Nusselt number, table',
      nusseltPlatesDeveloping(xStar),
      printed,
      { within: 0.012, because: 'the coarser steps miss 1.1 % at both ends' },
    );
    marched(['nusseltPlatesStephan1959']).says(
      'mean Nusselt number after Stephan',
      nusseltPlatesStephan1959(xStar, 0.71),
      printed,
      { within: 0.065, because: 'his fit is 6 % low at x* 0.002' },
    );
    marched(['nusseltDeveloping']).says(
      'mean Nusselt number of the channel of the solver',
      meanAt(1e-4, xStar, 0.71),
      printed,
      { within: 0.085, because: 'error of the composite' },
    );
  });

  test('developing velocity adds to what developing temperature gives', () => {
    const graetz = [23.416, 18.752, 11.623, 9.825, 8.01, 7.776]; // independent computation, plates
    graetz.forEach((low, i) => {
      expect(nusseltPlatesDeveloping(xStars[i] as number)).toBeGreaterThan(low);
    });
  });
});

// Our own sink 50 × 50 × 20 mm, ten channels of 3.9 mm, 25 °C.
describe('Coefficient of the reference sink beside endless plates', () => {
  const plates = published({
    source: 'ownComputation',
    where: 'boundary-layer solution between endless plates',
    kind: 'computed elsewhere',
    methods: ['nusseltDeveloping'],
  });
  const air = createAirProperties();
  airProperties(air, 298.15, 101325, 1);
  const channel = prepareNusselt(3.9e-3, 20e-3, 50e-3);

  test.each([
    [539.3, 32.8],
    [1078.5, 39.73],
    [2157, 50.71],
  ])('Re %f: at most the plates’ %f W/m²K, at least 85 %% of it', (reynolds, printed) => {
    const h = (channelNusselt(channel, reynolds, air.prandtl) * air.k_WPerMK) / channel.hydraulic_m;
    plates.says('heat transfer coefficient [W/(m²·K)]', h, String(printed), {
      within: [-0.15, 0],
      because: 'four walls with corners at an aspect of 0.195: developed, they give 36 % less',
    });
  });
});
