import { describe, test } from 'vitest';
import { frictionApparent } from '../../../src/core/channel/frictionApparent.ts';
import { frictionApparentShah1978 } from '../../../src/core/channel/frictionApparentShah1978.ts';
import { frictionDeveloped } from '../../../src/core/channel/frictionDeveloped.ts';
import { frictionDevelopedSeries } from '../../../src/core/channel/frictionDevelopedSeries.ts';
import { frictionTurbulent } from '../../../src/core/channel/frictionTurbulent.ts';
import { momentumFactor } from '../../../src/core/channel/momentumFactor.ts';
import { published } from '../../helpers/published.ts';

describe('Developed friction of rectangular channels, f·Re (Fanning)', () => {
  const collocation = published({
    source: 'ownComputation',
    where: 'Chebyshev collocation of the velocity profile, N = 30',
    kind: 'computed elsewhere',
    methods: ['frictionDevelopedSeries', 'frictionDeveloped'],
  });

  test.each([
    [1, 14.2271],
    [0.5, 15.5481],
    [1 / 3, 17.0897],
    [0.25, 18.2328],
    [0.2, 19.0705],
    [1 / 6, 19.7022],
    [0.125, 20.5846],
    [0.1, 21.1689],
    [0.05, 22.477],
  ])('aspect %f: %f', (aspect, fRe) => {
    collocation.says('f·Re by the series', frictionDevelopedSeries(aspect), fRe.toFixed(4));
    collocation.says('f·Re by the fit', frictionDeveloped(aspect), String(fRe), {
      within: 6.5e-4,
      because: 'the fit’s largest error is stated as 0.06 %',
    });
  });
});

describe('Momentum factor of the developed profile', () => {
  const profile = published({
    source: 'ownComputation',
    where: 'integral over the exact velocity profile',
    kind: 'computed elsewhere',
    methods: ['momentumFactor'],
  });

  test.each([
    [1, 1.3784],
    [0.5, 1.3475],
    [0.25, 1.2876],
    [0.2, 1.2713],
    [0.1, 1.2365],
    [0, 1.2],
  ])('aspect %f: %f', (aspect, factor) => {
    profile.says('momentum factor', momentumFactor(aspect), factor.toFixed(4));
  });
});

describe('Apparent friction between plates, f_app·Re', () => {
  const marched = published({
    source: 'ownComputation',
    where: 'implicit boundary-layer marching, 600 nodes, 1980 steps',
    kind: 'computed elsewhere',
    methods: ['frictionApparentShah1978', 'frictionApparent'],
  });
  const rows: [number, number][] = [
    [5e-4, 154.0],
    [1e-3, 110.2],
    [5e-3, 53.02],
    [0.01, 40.23],
    [0.02, 32.36],
    [0.05, 27.35],
    [0.1, 25.68],
  ];

  test.each(rows)('x⁺ %f: %f; Shah within 2.2 %%, the composite 0 to 6 %% above', (xPlus, exact) => {
    marched.says('f_app·Re after Shah', frictionApparentShah1978(xPlus), String(exact), {
      within: 0.022,
      because: 'his fit’s own error',
    });
    marched.says('f_app·Re of the composite', frictionApparent(xPlus, 24), String(exact), {
      within: [0, 0.06],
      because: 'two limits joined: known to be high by up to 5.6 %',
    });
  });

  test('x⁺ 0.01: the composite itself is 41.945', () => {
    const again = published({
      source: 'muzychkaYovanovich2009',
      where: 'the published form worked by hand',
      kind: 'worked again',
      methods: ['frictionApparent'],
    });
    again.says('f_app·Re of the composite', frictionApparent(0.01, 24), '41.945');
  });
});

describe('Apparent friction of rectangular channels, f_app·Re', () => {
  const linearised = published({
    source: 'ownComputation',
    where: 'linearised entrance flow (Fleming & Sparrow), itself 0.2 to 1.9 % low between plates',
    kind: 'computed elsewhere',
    methods: ['frictionApparent'],
  });
  const xPluses = [0.001, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2];
  test.each([
    [1, [106.2, 49.71, 36.93, 28.21, 20.93, 17.75, 16.0]],
    [0.5, [106.4, 49.95, 37.2, 28.54, 21.55, 18.69, 17.14]],
    [0.25, [106.7, 50.45, 37.79, 29.36, 23.06, 20.71, 19.48]],
    [0.2, [106.8, 50.62, 38.0, 29.67, 23.6, 21.38, 20.23]],
    [0.1, [107.1, 51.08, 38.57, 30.55, 25.05, 23.12, 22.15]],
  ] as [number, number[]][])('aspect %f: the composite is up to 6 %% above', (aspect, values) => {
    values.forEach((exact, i) => {
      const xPlus = xPluses[i] as number;
      const found = frictionApparent(xPlus, frictionDeveloped(aspect));
      linearised.says(`f_app·Re at x⁺ ${xPlus}`, found, String(exact), {
        within: [-0.002, 0.06],
        because: 'accuracy of the linearised solution below; two limits joined are known to be high by 5.6 %',
      });
    });
  });
});

describe('Turbulent friction of smooth channels', () => {
  const library = (where: string, kind: 'worked again' | 'computed elsewhere') =>
    published({
      source: 'haaland1983',
      where: `Python library fluids 1.0.22, ${where}`,
      kind,
      methods: ['frictionTurbulent'],
    });

  test('Re 10 000 after Haaland: a quarter of 0.030886', () => {
    library('Haaland', 'worked again').says('Darcy friction factor', 4 * frictionTurbulent(1e4), '0.030886');
  });

  test.each([
    ['Blasius', 0.03164],
    ['Petukhov', 0.03148],
  ])('Re 10 000 after %s: Darcy %f', (law, darcy) => {
    library(law, 'computed elsewhere').says(
      'Darcy friction factor',
      4 * frictionTurbulent(1e4),
      String(darcy),
      { within: 0.03, because: 'scatter between the smooth-tube laws' },
    );
  });
});
