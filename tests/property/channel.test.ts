import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { channelNusselt, prepareNusselt } from '../../src/core/channel/channelNusselt.ts';
import { frictionDeveloped } from '../../src/core/channel/frictionDeveloped.ts';
import { nusseltDevelopedT } from '../../src/core/channel/nusseltDevelopedT.ts';
import { nusseltDevelopedThreeWalls } from '../../src/core/channel/nusseltDevelopedThreeWalls.ts';
import { laminarUpTo, passageDrop, turbulentFrom } from '../../src/core/channel/passageDrop.ts';

const runs = { seed: 20261125, numRuns: 300 };
/** Numbers spread evenly over the powers of ten. */
const decades = (low: number, high: number) =>
  fc.double({ min: low, max: high, noNaN: true }).map((exponent) => 10 ** exponent);

const rho = 1.1839;
const mu = 1.8372e-5;
/** Gap, height, length, losses at the ends. */
const passages = fc.tuple(
  decades(-3.5, -1.3),
  decades(-3, -1),
  decades(-2.5, 0),
  fc.double({ min: 0, max: 5, noNaN: true }),
);
type Passage = [gap_m: number, height_m: number, length_m: number, loss: number];

const out = new Float64Array(2);
function drop([gap_m, height_m, length_m, loss]: Passage, reynolds: number): [dp_Pa: number, slope: number] {
  const hydraulic_m = (2 * gap_m * height_m) / (gap_m + height_m);
  passageDrop(out, (reynolds * mu) / (rho * hydraulic_m), rho, mu, gap_m, height_m, length_m, loss, 1);
  return [out[0] as number, out[1] as number];
}

describe('pressure drop of a passage', () => {
  test('rises with flow through every regime, and its slope never vanishes', () => {
    fc.assert(
      fc.property(
        passages,
        decades(-6, 5),
        fc.double({ min: 1.0001, max: 1.5, noNaN: true }),
        (passage, reynolds, factor) => {
          const [low, slope] = drop(passage, reynolds);
          const [high] = drop(passage, reynolds * factor);
          expect(high).toBeGreaterThan(low);
          expect(slope).toBeGreaterThan(0);
          expect(Number.isFinite(high) && Number.isFinite(slope)).toBe(true);
        },
      ),
      runs,
    );
  });

  test('rises all the way through the transition, however short the passage', () => {
    fc.assert(
      fc.property(passages, (passage) => {
        let before = drop(passage, 2000)[0];
        for (let reynolds = 2020; reynolds <= 4400; reynolds += 20) {
          const here = drop(passage, reynolds)[0];
          expect(here).toBeGreaterThan(before);
          before = here;
        }
      }),
      runs,
    );
  });

  test('is odd in velocity, with an even slope', () => {
    fc.assert(
      fc.property(passages, decades(-6, 5), (passage, reynolds) => {
        const [forth, slopeForth] = drop(passage, reynolds);
        const [back, slopeBack] = drop(passage, -reynolds);
        expect(back).toBe(-forth);
        expect(slopeBack).toBe(slopeForth);
      }),
      runs,
    );
  });

  test('does not jump where laminar flow ends nor where turbulence is complete', () => {
    fc.assert(
      fc.property(passages, fc.constantFrom(laminarUpTo, turbulentFrom), (passage, edge) => {
        const below = drop(passage, edge * (1 - 1e-9))[0];
        const above = drop(passage, edge * (1 + 1e-9))[0];
        expect(Math.abs(above / below - 1)).toBeLessThan(1e-8);
      }),
      runs,
    );
  });

  test('the slope is the derivative of the drop', () => {
    fc.assert(
      fc.property(passages, decades(-2, 5), (passage, reynolds) => {
        const step = 1e-6 * reynolds;
        // A kink of the law may lie between the two points: both one-sided slopes bound it.
        const perReynolds = (mu * (passage[0] + passage[1])) / (rho * 2 * passage[0] * passage[1]);
        const chord =
          (drop(passage, reynolds + step)[0] - drop(passage, reynolds - step)[0]) / (2 * step * perReynolds);
        const slopes = [drop(passage, reynolds - step)[1], drop(passage, reynolds + step)[1]];
        expect(chord).toBeGreaterThan(Math.min(...slopes) * (1 - 1e-6));
        expect(chord).toBeLessThan(Math.max(...slopes) * (1 + 1e-6));
      }),
      runs,
    );
  });

  test('a longer passage costs more', () => {
    fc.assert(
      fc.property(
        passages,
        decades(-3, 5),
        fc.double({ min: 1.001, max: 10, noNaN: true }),
        (passage, reynolds, factor) => {
          const [gap_m, height_m, length_m, loss] = passage;
          expect(drop([gap_m, height_m, length_m * factor, loss], reynolds)[0]).toBeGreaterThan(
            drop(passage, reynolds)[0],
          );
        },
      ),
      runs,
    );
  });

  test('creeping flow costs in proportion to its velocity', () => {
    fc.assert(
      fc.property(passages, decades(-9, -7), (passage, reynolds) => {
        const ratio = drop(passage, 2 * reynolds)[0] / drop(passage, reynolds)[0];
        expect(Math.abs(ratio - 2)).toBeLessThan(1e-4); // what the entrance still adds at Re 1e-7
      }),
      runs,
    );
  });

  test('a passage ever wider than its gap becomes a pair of plates: creeping drop 12μLV/b²', () => {
    fc.assert(
      fc.property(decades(-4, -2), decades(-2, 0), (gap_m, length_m) => {
        passageDrop(out, 0, rho, mu, gap_m, gap_m * 1e6, length_m, 0, 1);
        expect((out[1] as number) / ((12 * mu * length_m) / gap_m ** 2)).toBeCloseTo(1, 5);
      }),
      runs,
    );
  });
});

describe('heat transfer of a channel', () => {
  const prandtls = fc.double({ min: 0.65, max: 0.75, noNaN: true });

  test('more flow never cools less, through every regime', () => {
    fc.assert(
      fc.property(
        passages,
        decades(-8, 5),
        fc.double({ min: 1, max: 1.5, noNaN: true }),
        prandtls,
        (passage, reynolds, factor, pr) => {
          const channel = prepareNusselt(passage[0], passage[1], passage[2]);
          const low = channelNusselt(channel, reynolds, pr);
          const high = channelNusselt(channel, reynolds * factor, pr);
          expect(Number.isFinite(low) && low > 0).toBe(true);
          expect(high).toBeGreaterThanOrEqual(low * (1 - 1e-13));
        },
      ),
      runs,
    );
  });

  test('does not jump where laminar flow ends nor where turbulence is complete', () => {
    fc.assert(
      fc.property(passages, fc.constantFrom(laminarUpTo, turbulentFrom), prandtls, (passage, edge, pr) => {
        const channel = prepareNusselt(passage[0], passage[1], passage[2]);
        const below = channelNusselt(channel, edge * (1 - 1e-9), pr);
        const above = channelNusselt(channel, edge * (1 + 1e-9), pr);
        expect(Math.abs(above / below - 1)).toBeLessThan(1e-7);
      }),
      runs,
    );
  });

  test('a shorter channel cools its walls better', () => {
    fc.assert(
      fc.property(
        passages,
        decades(0, 5),
        fc.double({ min: 1, max: 10, noNaN: true }),
        prandtls,
        (passage, reynolds, factor, pr) => {
          const [gap_m, height_m, length_m] = passage;
          const long = channelNusselt(prepareNusselt(gap_m, height_m, length_m * factor), reynolds, pr);
          const short = channelNusselt(prepareNusselt(gap_m, height_m, length_m), reynolds, pr);
          expect(short).toBeGreaterThanOrEqual(long * (1 - 1e-13));
        },
      ),
      runs,
    );
  });

  test('without flow no rectangle does better than plates, nor worse than the square by more than its fit', () => {
    fc.assert(
      fc.property(passages, (passage) => {
        const still = channelNusselt(prepareNusselt(passage[0], passage[1], passage[2]), 0, 0.71);
        expect(still).toBeLessThanOrEqual(7.541 * (1 + 1e-12));
        expect(still).toBeGreaterThan(0.95 * nusseltDevelopedT(1));
      }),
      runs,
    );
  });
});

describe('developed values over the aspect', () => {
  const aspects = fc.double({ min: 0, max: 0.98, noNaN: true });

  test('fall from plates towards the square', () => {
    fc.assert(
      fc.property(aspects, fc.double({ min: 1e-3, max: 0.02, noNaN: true }), (aspect, step) => {
        for (const value of [frictionDeveloped, nusseltDevelopedThreeWalls]) {
          expect(value(aspect + step)).toBeLessThan(value(aspect));
        }
      }),
      runs,
    );
  });
});
