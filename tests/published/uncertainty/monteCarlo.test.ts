import { describe, test } from 'vitest';
import { seededDraws } from '../../../src/core/solve/draws.ts';
import { lognormalFromMean, normalCdf, normalQuantile } from '../../../src/core/solve/normal.ts';
import { quantile } from '../../../src/core/solve/quantile.ts';
import { expectPublished } from '../../helpers/published.ts';

const count = 200_000;

function summary(draw: () => number) {
  const values = Float64Array.from({ length: count }, draw).sort();
  const mean = values.reduce((sum, v) => sum + v, 0) / count;
  const deviation = Math.sqrt(values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / (count - 1));
  return { mean, deviation, at: (share: number) => quantile(values, share) };
}

// 5 W through a bond line (0.15 mm ± 10 %, 1 W/(m·K) ± 15 %, 20 mm²) and 3 K/W ± 12 %, all lognormal; method of JCGM 101.
// Source of the numbers: closed form, and 2·10⁶ draws of an independent Python program (numpy).
describe('a bond line with spreads, 200,000 seeded draws', () => {
  const draws = seededDraws(20261125);
  const bond_KPerW = () => draws.lognormal(0.15e-3, 0.1) / (draws.lognormal(1, 0.15) * 20e-6);
  const rise_K = summary(() => 5 * (bond_KPerW() + draws.lognormal(3, 0.12)));
  const drawn = {
    within: 0.003,
    because: '200,000 draws leave a standard error of up to 0.05 K in the tails',
  };

  test('has the exact mean 53.34375 K', () => expectPublished(rise_K.mean, '53.34375', drawn));
  test('has the exact deviation 7.1662 K', () => {
    expectPublished(rise_K.deviation, '7.1662', {
      within: 0.01,
      because: '200,000 draws: 0.2 % standard error and more, the tail is long',
    });
  });
  test.each([
    [0.05, '42.65'],
    [0.5, '52.78'],
    [0.95, '66.03'],
    [0.975, '69.06'],
  ])('has the quantile of %f at %s K', (share, printed) => {
    expectPublished(rise_K.at(share), printed, drawn);
  });

  test('its bond alone has median 7.5463 and p95 10.1372 K/W, drawn', () => {
    const bond = summary(bond_KPerW);
    expectPublished(bond.at(0.5), '7.5463', drawn);
    expectPublished(bond.at(0.95), '10.1372', drawn);
  });

  test('its bond alone has median 7.5463 and p95 10.1372 K/W, in closed form', () => {
    const [thickness, k] = [lognormalFromMean(0.15e-3, 0.1), lognormalFromMean(1, 0.15)];
    const at = (share: number) =>
      Math.exp(thickness.mu - k.mu + normalQuantile(share) * Math.hypot(thickness.sigma, k.sigma)) / 20e-6;
    expectPublished(at(0.5), '7.5463');
    expectPublished(at(0.95), '10.1372');
  });
});

// JCGM 101:2008, 9.2 (from memory): four inputs of unit deviation added up; 95 % lie between ∓3.92, or ∓3.88.
describe('JCGM 101, 9.2: sum of four', () => {
  const four = (draw: () => number) => summary(() => draw() + draw() + draw() + draw());
  const drawn = { within: 0.01, because: '200,000 draws leave a standard error of 0.01 at these quantiles' };

  test('normal ones has deviation 2.0 and 95 % below 3.92 on either side', () => {
    const draws = seededDraws(1);
    const sum = four(() => draws.normal(0, 1));
    expectPublished(sum.deviation, '2.0');
    expectPublished(sum.at(0.975), '3.92', drawn);
    expectPublished(sum.at(0.025), '-3.92', drawn);
  });

  test('even ones has deviation 2.0 and 95 % below 3.88 on either side', () => {
    const draws = seededDraws(2);
    const sum = four(() => Math.sqrt(3) * (2 * draws.uniform() - 1));
    expectPublished(sum.deviation, '2.0');
    expectPublished(sum.at(0.975), '3.88', drawn);
    expectPublished(sum.at(0.025), '-3.88', drawn);
  });
});

describe('the normal tail (worked in a separate program)', () => {
  test('108 K give or take 9 K passes 125 K with a chance of 0.02945', () => {
    expectPublished(1 - normalCdf((125 - 108) / 9), '0.02945');
  });

  // Any table of the standard normal distribution (from memory).
  test.each([
    [0.95, '1.6449'],
    [0.975, '1.9600'],
    [0.995, '2.5758'],
  ])('the quantile of %f is %s', (share, printed) => {
    expectPublished(normalQuantile(share), printed);
  });
});
