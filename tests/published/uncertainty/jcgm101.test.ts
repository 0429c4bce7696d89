import { describe, expect, test } from 'vitest';
import { seededDraws } from '../../../src/core/solve/draws.ts';
import { lognormalFromMean, normalCdf, normalQuantile } from '../../../src/core/solve/normal.ts';
import { quantile } from '../../../src/core/solve/quantile.ts';
import { expectPublished } from '../../helpers/published.ts';

// A film over its sink: 5 W through a bond of 0.15 mm on 20 mm² and 3 K/W of ceramic. Method: JCGM 101:2008 (from memory).
// Expected numbers: independent computation, numpy 1.24.2, two million draws; the moments are exact in closed form.

const power_W = 5;
const area_m2 = 20e-6;
const bond = { mean_m: 0.15e-3, variation: 0.1 };
const adhesive = { mean_WPerMK: 1, variation: 0.15 };
const ceramic = { mean_KPerW: 3, variation: 0.12 };
const bondMean_KPerW = bond.mean_m / (adhesive.mean_WPerMK * area_m2);

describe('linear propagation (JCGM 100:2008)', () => {
  test('52.5 K with a standard uncertainty of 6.9959 K', () => {
    const parts = [
      power_W * bondMean_KPerW * bond.variation,
      power_W * bondMean_KPerW * adhesive.variation,
      power_W * ceramic.mean_KPerW * ceramic.variation,
    ];
    expectPublished(power_W * (bondMean_KPerW + ceramic.mean_KPerW), '52.5');
    expectPublished(Math.hypot(...parts), '6.9959');
  });
});

describe('the bond alone, lognormal over lognormal', () => {
  const t = lognormalFromMean(bond.mean_m, bond.variation);
  const k = lognormalFromMean(adhesive.mean_WPerMK, adhesive.variation);
  const at = (share: number) =>
    Math.exp(t.mu - k.mu + normalQuantile(share) * Math.hypot(t.sigma, k.sigma)) / area_m2;

  test('has a median of 7.5463 K/W', () => expectPublished(at(0.5), '7.5463'));
  test('stays below 10.1372 K/W in 95 of 100', () => {
    expectPublished(at(0.95), '10.1372', {
      within: 2e-3,
      because: 'the printed quantile is itself from draws',
    });
  });
});

describe('200 000 draws (JCGM 101)', () => {
  const draws = seededDraws(20261125);
  const rise_K = Float64Array.from({ length: 200_000 }, () => {
    const bond_KPerW =
      draws.lognormal(bond.mean_m, bond.variation) /
      (draws.lognormal(adhesive.mean_WPerMK, adhesive.variation) * area_m2);
    return power_W * (bond_KPerW + draws.lognormal(ceramic.mean_KPerW, ceramic.variation));
  }).sort();
  const mean_K = rise_K.reduce((sum, x) => sum + x, 0) / rise_K.length;

  test.each([
    [0.05, 42.65],
    [0.5, 52.78],
    [0.95, 66.03],
    [0.975, 69.06],
  ])('the quantile at %f is %f K', (share, expected_K) => {
    expect(Math.abs(quantile(rise_K, share) - expected_K)).toBeLessThan(0.3); // sampling, both sides
  });

  test('the mean is 53.34375 K and the deviation 7.1662 K, exact in closed form', () => {
    const variance = rise_K.reduce((sum, x) => sum + (x - mean_K) ** 2, 0) / (rise_K.length - 1);
    expect(Math.abs(mean_K - 53.34375)).toBeLessThan((5 * 7.1662) / Math.sqrt(rise_K.length)); // five standard errors
    expect(Math.abs(Math.sqrt(variance) - 7.1662)).toBeLessThan(0.1); // five standard errors, tail a little heavy
  });
});

test('a film at 108 °C ± 9 K (normal) passes 125 °C in 0.02945 of all builds', () => {
  expectPublished(1 - normalCdf((125 - 108) / 9), '0.02945');
});
