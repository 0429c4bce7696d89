import { describe, expect, test } from 'vitest';
import { lognormalFromMean, normalCdf, normalQuantile } from '../../../../src/core/solve/normal.ts';

// Expected numbers: scipy 1.10.1, scipy.stats.norm; the round ones are in every table of the normal distribution.
describe('normalCdf', () => {
  test.each([
    [-37, 5.7255712225239266e-300],
    [-20, 2.7536241186061556e-89],
    [-10, 7.61985302416047e-24],
    [-5, 2.866515718791933e-7],
    [-3.5, 0.00023262907903552502],
    [-3.4999, 0.0002327163625786131],
    [-1, 0.15865525393145707],
    [0, 0.5],
    [1, 0.8413447460685429],
    [2, 0.9772498680518208],
    [3.5, 0.9997673709209645],
  ])('at %f is %d', (z, share) => {
    expect(Math.abs(normalCdf(z) / share - 1)).toBeLessThan(1e-12);
  });

  test('ends at 0 and 1', () => {
    expect([-1e9, -40, 40, 1e9].map(normalCdf)).toEqual([0, 0, 1, 1]);
  });
});

describe('normalQuantile', () => {
  test.each([
    [1e-300, -37.0470962993612],
    [1e-100, -21.273453560965322],
    [1e-6, -4.753424308822899],
    [0.001, -3.090232306167813],
    [0.025, -1.9599639845400545],
    [0.9, 1.2815515655446004],
    [0.95, 1.6448536269514722],
    [0.99, 2.3263478740408408],
    [0.995, 2.5758293035489004],
    [0.999999999, 5.997807019601637],
  ])('at %d is %f', (share, z) => {
    expect(Math.abs(normalQuantile(share) - z)).toBeLessThan(1e-9);
  });

  test('is nil at one half and finite at the ends', () => {
    expect(Math.abs(normalQuantile(0.5))).toBeLessThan(1e-15);
    expect([0, 5e-324, 1].map(normalQuantile)).toEqual([-38, -38, 38]);
  });
});

describe('lognormalFromMean', () => {
  test('gives back mean and coefficient of variation by the moments of the distribution', () => {
    const { mu, sigma } = lognormalFromMean(3, 0.4);
    expect(Math.exp(mu + sigma ** 2 / 2)).toBeCloseTo(3, 13);
    expect(Math.sqrt(Math.exp(sigma ** 2) - 1)).toBeCloseTo(0.4, 13);
  });

  test('without variation is the mean itself', () => {
    expect(lognormalFromMean(5, 0)).toEqual({ mu: Math.log(5), sigma: 0 });
  });
});
