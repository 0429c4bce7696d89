import { describe, expect, test } from 'vitest';
import { frictionApparent } from '../../../src/core/channel/frictionApparent.ts';
import { frictionApparentShah1978 } from '../../../src/core/channel/frictionApparentShah1978.ts';
import { frictionDeveloped } from '../../../src/core/channel/frictionDeveloped.ts';
import { frictionDevelopedSeries } from '../../../src/core/channel/frictionDevelopedSeries.ts';
import { frictionTurbulent } from '../../../src/core/channel/frictionTurbulent.ts';
import { momentumFactor } from '../../../src/core/channel/momentumFactor.ts';

// Independent computation: Chebyshev collocation of the velocity profile, N = 30.
describe('Developed friction of rectangular channels, f·Re (Fanning)', () => {
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
    expect(frictionDevelopedSeries(aspect)).toBeCloseTo(fRe, 4);
    const fit = 6.5e-4; // the fit's largest error is stated as 0.06 %
    expect(Math.abs(frictionDeveloped(aspect) / fRe - 1)).toBeLessThan(fit);
  });
});

// Independent computation from the exact velocity profile.
describe('Momentum factor of the developed profile', () => {
  test.each([
    [1, 1.3784],
    [0.5, 1.3475],
    [0.25, 1.2876],
    [0.2, 1.2713],
    [0.1, 1.2365],
    [0, 1.2],
  ])('aspect %f: %f', (aspect, factor) => expect(momentumFactor(aspect)).toBeCloseTo(factor, 4));
});

// Independent computation: implicit boundary-layer marching, 600 nodes, 1980 steps.
describe('Apparent friction between plates, f_app·Re', () => {
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
    expect(Math.abs(frictionApparentShah1978(xPlus) / exact - 1)).toBeLessThan(0.022); // his fit's own error
    const composite = frictionApparent(xPlus, 24) / exact - 1;
    expect(composite).toBeGreaterThan(0);
    expect(composite).toBeLessThan(0.06); // two limits joined: known to be high by up to 5.6 %
  });

  test('x⁺ 0.01: the composite itself is 41.945', () => {
    expect(frictionApparent(0.01, 24)).toBeCloseTo(41.945, 3);
  });
});

// Independent computation: linearised entrance flow (Fleming & Sparrow), itself 0.2 to 1.9 % low between plates.
describe('Apparent friction of rectangular channels, f_app·Re', () => {
  const xPluses = [0.001, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2];
  test.each([
    [1, [106.2, 49.71, 36.93, 28.21, 20.93, 17.75, 16.0]],
    [0.5, [106.4, 49.95, 37.2, 28.54, 21.55, 18.69, 17.14]],
    [0.25, [106.7, 50.45, 37.79, 29.36, 23.06, 20.71, 19.48]],
    [0.2, [106.8, 50.62, 38.0, 29.67, 23.6, 21.38, 20.23]],
    [0.1, [107.1, 51.08, 38.57, 30.55, 25.05, 23.12, 22.15]],
  ] as [number, number[]][])('aspect %f: the composite is up to 6 %% above', (aspect, values) => {
    values.forEach((exact, i) => {
      const ratio = frictionApparent(xPluses[i] as number, frictionDeveloped(aspect)) / exact;
      expect(ratio).toBeGreaterThan(0.998); // accuracy of the linearised solution
      expect(ratio).toBeLessThan(1.06); // two limits joined: known to be high by up to 5.6 %
    });
  });
});

describe('Turbulent friction of smooth channels', () => {
  // Haaland as coded in the Python library fluids 1.0.22: Darcy 0.030886.
  test('Re 10 000 after Haaland: a quarter of 0.030886', () => {
    expect(4 * frictionTurbulent(1e4)).toBeCloseTo(0.030886, 6);
  });

  // Python library fluids 1.0.22: Blasius, Petukhov.
  test.each([
    ['Blasius', 0.03164],
    ['Petukhov', 0.03148],
  ])('Re 10 000 after %s: Darcy %f', (_, darcy) => {
    const within = 0.03; // scatter between the smooth-tube laws
    expect(Math.abs((4 * frictionTurbulent(1e4)) / darcy - 1)).toBeLessThan(within);
  });
});
