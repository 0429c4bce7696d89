import { describe, test } from 'vitest';
import { lognormalFromMean } from '../../../src/core/solve/normal.ts';
import { quantile } from '../../../src/core/solve/quantile.ts';
import { sampleSummary } from '../../../src/core/solve/sampleSummary.ts';
import { togetherOf } from '../../../src/studies/tolerance/estimate.ts';
import { boxSequence } from '../../../src/studies/tolerance/sequence.ts';
import { type Deviation, deviated, variate } from '../../../src/studies/tolerance/variate.ts';
import { published } from '../../helpers/published.ts';

/** A skewed spread by arithmetic mean and coefficient of variation, as the study draws it: about its middle value. */
function skewed(mean: number, variation: number) {
  const { mu, sigma } = lognormalFromMean(mean, variation);
  const deviation: Deviation = { kind: 'lognormal', relative: true, size: sigma };
  return (share: number) => deviated(Math.exp(mu), deviation, variate('lognormal', share));
}

// 5 W through a bond line (0.15 mm ± 10 %, 1 W/(m·K) ± 15 %, 20 mm²) and 3 K/W ± 12 %, all lognormal; method of JCGM 101.
describe('a bond line with spreads, drawn as the study of parts that vary draws', () => {
  const program = published({
    source: 'ownComputation',
    where: 'closed form, and 2,000,000 draws of an independent Python program, numpy',
    kind: 'computed elsewhere',
  });
  const draws = 65_532;
  const [thickness_m, k_WPerMK, rest_KPerW] = [skewed(0.15e-3, 0.1), skewed(1, 0.15), skewed(3, 0.12)];
  const riseOf = (boxes: number) => {
    const sequence = boxSequence(1, 2, { seed: 20261128, boxes, draws });
    const point = new Float64Array(3);
    return Float64Array.from({ length: draws }, (_, i) => {
      sequence.read(i, point);
      const [a = 0, b = 0, c = 0] = point;
      return 5 * (thickness_m(b) / (k_WPerMK(a) * 20e-6) + rest_KPerW(c));
    });
  };
  const drawn = { within: 0.002, because: '65,532 quasi-random draws: 0.1 K in the tails' };

  test.each([1, 12])('in batches of %i has the mean, deviation and quantiles', (boxes) => {
    const summary = sampleSummary(riseOf(boxes));
    if (!summary) throw new Error('there are draws');
    program.says('mean rise [K]', summary.mean, '53.34375', { within: 0.001, because: '65,532 draws' });
    program.says('standard deviation of the rise [K]', summary.deviation, '7.1662', {
      within: 0.01,
      because: '65,532 draws, the tail is long',
    });
    for (const [share, printed] of [
      [0.05, '42.65'],
      [0.5, '52.78'],
      [0.95, '66.03'],
      [0.975, '69.06'],
    ] as const)
      program.says(
        `rise that a share of ${share} stays below [K]`,
        quantile(summary.sorted, share),
        printed,
        boxes === 1 ? drawn : { within: 0.005, because: 'twelve share a conductivity: 5461 draws of it' },
      );
  });

  // Conductivity common to a batch, the rest box by box: the mean over the conductivity of P(rise ≤ 66.03 K)¹², integrated
  // in a separate Python program. With nothing in common it would be 0.95¹² = 0.54, with everything 0.95.
  test('stays below its 95 % value in all twelve boxes of a batch with a chance of 0.787', () => {
    const batches = draws / 12;
    const holds = Uint8Array.from(riseOf(12), (rise_K) => Number(rise_K <= 66.03));
    const together = togetherOf(holds, 12);
    const deviation = Math.sqrt((0.787 * 0.213) / batches);
    const integrated = published({
      source: 'ownComputation',
      where: 'integrated over the conductivity in a separate Python program',
      kind: 'computed elsewhere',
    });
    integrated.says('chance that all twelve stay below', together?.share ?? 0, '0.787', {
      within: (2.5 * deviation) / 0.787,
      because: '5461 batches: a standard error of 0.006',
    });
  });
});
