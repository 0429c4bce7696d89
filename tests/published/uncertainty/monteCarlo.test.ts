import { describe, test } from 'vitest';
import {
  boundedLognormalQuantile,
  boundedNormalQuantile,
  uniformQuantile,
} from '../../../src/core/solve/distributions.ts';
import { lognormalFromMean, normalCdf, normalQuantile } from '../../../src/core/solve/normal.ts';
import { quantile } from '../../../src/core/solve/quantile.ts';
import { quasiRandom } from '../../../src/core/solve/quasiRandom.ts';
import { type SampleSummary, sampleSummary } from '../../../src/core/solve/sampleSummary.ts';
import { classIndices } from '../../helpers/classIndices.ts';
import { published } from '../../helpers/published.ts';

const count = 2 ** 17;

/** Inputs one after the other, each of its own share of evenly spread points. */
function drawn(spreads: readonly ((share: number) => number)[], seed: number): Float64Array[] {
  const points = new Float64Array(count * spreads.length);
  quasiRandom(spreads.length, seed).fill(0, count, points);
  return spreads.map((spread, d) =>
    Float64Array.from({ length: count }, (_, i) => spread(points[i * spreads.length + d] as number)),
  );
}

function summaryOf(columns: readonly Float64Array[], result: (...inputs: number[]) => number) {
  const values = Float64Array.from({ length: count }, (_, i) =>
    result(...columns.map((c) => c[i] as number)),
  );
  const summary = sampleSummary(values) as SampleSummary;
  return { ...summary, values, at: (share: number) => quantile(summary.sorted, share) };
}

// 5 W through a bond line (0.15 mm ± 10 %, 1 W/(m·K) ± 15 %, 20 mm²) and 3 K/W ± 12 %, all lognormal; method of JCGM 101.
describe('a bond line with spreads, 131,072 evenly spread draws', () => {
  const closed = published({
    source: 'ownComputation',
    where:
      'closed form; quantiles by an integral over the bond of the distribution of the rest, scipy 1.17.1',
    kind: 'computed elsewhere',
  });
  const inputs = drawn(
    [
      (share) => boundedLognormalQuantile(share, 0.15e-3, 0.1),
      (share) => boundedLognormalQuantile(share, 1, 0.15),
      (share) => boundedLognormalQuantile(share, 3, 0.12),
    ],
    20261125,
  );
  const rise_K = summaryOf(
    inputs,
    (t_m, k_WPerMK, rest_KPerW) => 5 * (t_m / (k_WPerMK * 20e-6) + rest_KPerW),
  );
  const even = (within: number) => ({
    within,
    because: 'even draws cut the error of a quantile to a third of that of random ones, not to nothing',
  });

  test('has the exact mean 53.34375 K', () => {
    closed.says('mean rise [K]', rise_K.mean, '53.34375', {
      within: 2e-6,
      because: 'the last of the tail is never drawn',
    });
  });
  test('has the exact deviation 7.1662 K', () => {
    closed.says('standard deviation of the rise [K]', rise_K.deviation, '7.1662', {
      within: 2e-4,
      because: 'the last of the tail is never drawn',
    });
  });
  test.each([
    [0.05, '42.6416', 2e-4],
    [0.5, '52.7644', 2e-4],
    [0.95, '66.0193', 3e-4],
    [0.975, '69.0075', 6e-4],
  ])('has the quantile of %f at %s K', (share, printed, within) => {
    closed.says(`rise that a share of ${share} stays below [K]`, rise_K.at(share), printed, even(within));
  });

  const random = published({
    source: 'ownComputation',
    where: '2,000,000 random draws of another program, numpy',
    kind: 'computed elsewhere',
  });
  test.each([
    [0.05, '42.65'],
    [0.5, '52.78'],
    [0.95, '66.03'],
    [0.975, '69.06'],
  ])('agrees with 2,000,000 random draws, whose quantile of %f is %s K', (share, printed) => {
    random.says(`rise that a share of ${share} stays below [K]`, rise_K.at(share), printed, {
      within: 1e-3,
      because: '2,000,000 random draws have a standard error of 0.01 to 0.024 K themselves',
    });
  });

  // Closed form: variances of a product of lognormals and of a sum.
  test('owes 28.63 % of its variance to thickness, 64.42 % to conductivity, 6.31 % to the rest', () => {
    const shares = classIndices(inputs, rise_K.values);
    const fitted = { within: 0.002, because: 'lines in classes' };
    ['0.2863', '0.6442', '0.0631'].forEach((printed, d) => {
      closed.says(`share of variance of input ${d + 1}`, shares[d] as number, printed, fitted);
    });
  });

  test('its bond alone has median 7.5463 and p95 10.1372 K/W, drawn', () => {
    const bond = summaryOf(inputs.slice(0, 2), (t_m, k_WPerMK) => t_m / (k_WPerMK * 20e-6));
    closed.says('median [K/W]', bond.at(0.5), '7.5463', even(2e-4));
    closed.says('95 % quantile [K/W]', bond.at(0.95), '10.1372', even(2e-4));
  });

  test('its bond alone has median 7.5463 and p95 10.1372 K/W, in closed form', () => {
    const [thickness, k] = [lognormalFromMean(0.15e-3, 0.1), lognormalFromMean(1, 0.15)];
    const at = (share: number) =>
      Math.exp(thickness.mu - k.mu + normalQuantile(share) * Math.hypot(thickness.sigma, k.sigma)) / 20e-6;
    closed.says('median [K/W]', at(0.5), '7.5463');
    closed.says('95 % quantile [K/W]', at(0.95), '10.1372');
  });
});

// Four inputs of unit deviation added up; 95 % lie between ∓3.92, or ∓3.88.
describe('JCGM 101, 9.2: sum of four', () => {
  const jcgm = published({ source: 'JCGM 101:2008', where: '9.2', kind: 'from memory' });
  const [deviation, high, low] = ['standard deviation', '97.5 % quantile', '2.5 % quantile'];
  const sumOfFour = (spread: (share: number) => number, seed: number) =>
    summaryOf(drawn(Array(4).fill(spread), seed), (a, b, c, d) => a + b + c + d);

  const even = {
    within: 0.004,
    because: '131,072 even draws leave a standard error of 0.007 at these quantiles',
  };

  test('normal ones has deviation 2.0 and 95 % below 3.92 on either side', () => {
    const sum = sumOfFour(normalQuantile, 1);
    jcgm.says(deviation, sum.deviation, '2.0');
    jcgm.says(high, sum.at(0.975), '3.92', even);
    jcgm.says(low, sum.at(0.025), '-3.92', even);
  });

  test('even ones has deviation 2.0 and 95 % below 3.88 on either side', () => {
    const sum = sumOfFour((share) => uniformQuantile(share, -Math.sqrt(3), Math.sqrt(3)), 2);
    jcgm.says(deviation, sum.deviation, '2.0');
    jcgm.says(high, sum.at(0.975), '3.88', even);
    jcgm.says(low, sum.at(0.025), '-3.88', even);
  });
});

describe('the normal tail (worked in a separate program)', () => {
  const program = published({
    source: 'ownComputation',
    where: 'normal distribution in a separate program',
    kind: 'computed elsewhere',
  });
  const chance = 'chance of passing';

  test('108 K give or take 9 K passes 125 K with a chance of 0.02945', () => {
    program.says(chance, 1 - normalCdf((125 - 108) / 9), '0.02945');
  });

  test('and by drawing', () => {
    const [hottest] = drawn([(share) => boundedNormalQuantile(share, 108, 9)], 3) as [Float64Array];
    const above = hottest.filter((T_K) => T_K > 125).length / count;
    program.says(chance, above, '0.02945', { off: 1 / count, because: 'one draw more or less' });
  });

  const table = published({
    source: 'Any table of the standard normal distribution',
    kind: 'from memory',
  });
  test.each([
    [0.95, '1.6449'],
    [0.975, '1.9600'],
    [0.995, '2.5758'],
  ])('the quantile of %f is %s', (share, printed) => {
    table.says('quantile', normalQuantile(share), printed);
  });
});
