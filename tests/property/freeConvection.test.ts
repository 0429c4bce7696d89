import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nusseltChannelBarCohenRohsenow1984 } from '../../src/core/freeConvection/nusseltChannelBarCohenRohsenow1984.ts';
import { nusseltChannelElenbaas1942 } from '../../src/core/freeConvection/nusseltChannelElenbaas1942.ts';
import { nusseltChannelOneSideBarCohenRohsenow1984 } from '../../src/core/freeConvection/nusseltChannelOneSideBarCohenRohsenow1984.ts';
import { nusseltHorizontalDown } from '../../src/core/freeConvection/nusseltHorizontalDown.ts';
import { nusseltHorizontalUp } from '../../src/core/freeConvection/nusseltHorizontalUp.ts';
import { nusseltVerticalPlateChurchillChu1975 } from '../../src/core/freeConvection/nusseltVerticalPlateChurchillChu1975.ts';
import { nusseltVerticalPlateLaminarChurchillChu1975 } from '../../src/core/freeConvection/nusseltVerticalPlateLaminarChurchillChu1975.ts';

const runs = { seed: 20261125, numRuns: 300 };
/** Numbers spread evenly over the powers of ten. */
const decades = (low: number, high: number) =>
  fc.double({ min: low, max: high, noNaN: true }).map((exponent) => 10 ** exponent);

const channels = [
  nusseltChannelBarCohenRohsenow1984,
  nusseltChannelOneSideBarCohenRohsenow1984,
  nusseltChannelElenbaas1942,
];
const plates = [
  nusseltHorizontalUp,
  nusseltHorizontalDown,
  (Ra: number) => nusseltVerticalPlateChurchillChu1975(Ra, 0.71),
  (Ra: number) => nusseltVerticalPlateLaminarChurchillChu1975(Ra, 0.71),
];

describe('free convection', () => {
  test('more buoyancy never cools less in a channel', () => {
    fc.assert(
      fc.property(decades(-6, 6), decades(0, 2), (El, factor) => {
        for (const nusselt of channels) {
          expect(Number.isFinite(nusselt(El))).toBe(true);
          expect(nusselt(El * factor)).toBeGreaterThanOrEqual(nusselt(El) * (1 - 1e-12));
        }
      }),
      runs,
    );
  });

  test('a wall beside an insulated one is at least as well cooled as one of a warm pair', () => {
    fc.assert(
      fc.property(decades(-6, 6), (El) => {
        const symmetric = nusseltChannelBarCohenRohsenow1984(El);
        expect(nusseltChannelOneSideBarCohenRohsenow1984(El)).toBeGreaterThanOrEqual(symmetric);
      }),
      runs,
    );
  });

  test('no channel does better than the two limits it joins', () => {
    fc.assert(
      fc.property(decades(-6, 6), (El) => {
        const nusselt = nusseltChannelBarCohenRohsenow1984(El);
        expect(nusselt).toBeLessThanOrEqual((El / 24) * (1 + 1e-12));
        expect(nusselt).toBeLessThanOrEqual((El ** 0.25 / Math.sqrt(2.873)) * (1 + 1e-12));
      }),
      runs,
    );
  });

  test('more buoyancy never cools a plate less, and nothing is infinite', () => {
    fc.assert(
      fc.property(decades(-3, 12), decades(0, 2), (Ra, factor) => {
        for (const nusselt of plates) {
          expect(Number.isFinite(nusselt(Ra))).toBe(true);
          expect(nusselt(Ra * factor)).toBeGreaterThanOrEqual(nusselt(Ra) * (1 - 1e-12));
        }
      }),
      runs,
    );
  });

  test('a plate facing up is better off than one facing down', () => {
    fc.assert(
      fc.property(decades(0, 12), (Ra) => {
        expect(nusseltHorizontalUp(Ra)).toBeGreaterThan(nusseltHorizontalDown(Ra));
      }),
      runs,
    );
  });
});
