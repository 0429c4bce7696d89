import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bondConductivityByVolume } from '../../src/core/conduction/bondConductivityByVolume.ts';
import { bondConductivityWithFilament } from '../../src/core/conduction/bondConductivityWithFilament.ts';
import { bondResistance_KPerW } from '../../src/core/conduction/bondResistance_KPerW.ts';
import { prepareSpreading, spreadingPeak_KPerW } from '../../src/core/conduction/spreadingLee.ts';
import { spreadingMean_KPerW } from '../../src/core/conduction/spreadingMean_KPerW.ts';
import { spreadingSeries_KPerW } from '../../src/core/conduction/spreadingSeries_KPerW.ts';

const runs = { seed: 20261125, numRuns: 300 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const bond = fc
  .record({
    adhesive_WPerMK: between(0.05, 5),
    filament_WPerMK: between(0.02, 400),
    filament_m: between(5e-5, 1e-3),
    share: between(0, 1),
    area_m2: between(1e-6, 1e-3),
  })
  .map(({ share, ...rest }) => ({ ...rest, filamentLength_m: (share * rest.area_m2) / rest.filament_m }));

describe('bond lines', () => {
  test('columns never carry more than the mean by volume, and both lie between the two materials', () => {
    fc.assert(
      fc.property(bond, (given) => {
        const low = Math.min(given.adhesive_WPerMK, given.filament_WPerMK);
        const high = Math.max(given.adhesive_WPerMK, given.filament_WPerMK);
        const columns = bondConductivityWithFilament(given);
        const volume = bondConductivityByVolume(given);
        const rounding = 1e-9 * high;
        expect(columns).toBeLessThanOrEqual(volume + rounding);
        expect(columns).toBeGreaterThanOrEqual(low - rounding);
        expect(volume).toBeLessThanOrEqual(high + rounding);
      }),
      runs,
    );
  });

  test('thicker, more porous or worse wetted is never better', () => {
    fc.assert(
      fc.property(
        between(0, 1e-3),
        between(0, 0.9),
        between(0, 1e-3),
        between(0.1, 5),
        (thickness_m, voidShare, contact_m2KPerW, k) => {
          const R = bondResistance_KPerW(thickness_m, k, 2e-5, voidShare, contact_m2KPerW);
          expect(R).toBeGreaterThanOrEqual(0);
          expect(
            bondResistance_KPerW(thickness_m * 1.1, k, 2e-5, voidShare, contact_m2KPerW),
          ).toBeGreaterThanOrEqual(R);
          expect(
            bondResistance_KPerW(thickness_m, k, 2e-5, voidShare + 0.05, contact_m2KPerW),
          ).toBeGreaterThanOrEqual(R);
          expect(
            bondResistance_KPerW(thickness_m, k, 2e-5, voidShare, contact_m2KPerW * 1.1),
          ).toBeGreaterThanOrEqual(R);
        },
      ),
      runs,
    );
  });
});

describe('spreading', () => {
  const plate = fc.record({
    side_m: between(5e-3, 0.3),
    radiusRatio: between(0.01, 1),
    thickness_m: between(2e-4, 0.05),
    k_WPerMK: between(0.2, 400),
    h_WPerM2K: between(0, 1e5),
  });

  test('peak ≥ mean ≥ 0, finite for any plate, and less with more cooling', () => {
    fc.assert(
      fc.property(plate, ({ side_m, radiusRatio, thickness_m, k_WPerMK, h_WPerM2K }) => {
        const area_m2 = side_m * side_m;
        const spreading = prepareSpreading(radiusRatio * radiusRatio * area_m2, area_m2, thickness_m);
        const peak = spreadingPeak_KPerW(spreading, k_WPerMK, h_WPerM2K);
        const mean = spreadingMean_KPerW(spreading, k_WPerMK, h_WPerM2K);
        expect(Number.isFinite(peak)).toBe(true);
        expect(mean).toBeGreaterThanOrEqual(0);
        expect(peak).toBeGreaterThanOrEqual(mean);
        const cooler = spreadingPeak_KPerW(spreading, k_WPerMK, h_WPerM2K * 2 + 1);
        expect(cooler).toBeLessThanOrEqual(peak * (1 + 1e-12));
      }),
      runs,
    );
  });

  test('within the stated range the closed form of the peak stays within −10 … +24 % of the series', () => {
    const inRange = fc.record({
      radiusRatio: between(0.1, 0.5),
      thicknessRatio: between(0.1, 1),
      biot: between(0.005, 0.5),
      sourceAspect: between(1, 2.5),
      plateAspect: between(1, 1.3),
    });
    fc.assert(
      fc.property(inRange, ({ radiusRatio, thicknessRatio, biot, sourceAspect, plateAspect }) => {
        const plateArea_m2 = 625e-6;
        const sourceArea_m2 = radiusRatio * radiusRatio * plateArea_m2;
        const radius_m = Math.sqrt(plateArea_m2 / Math.PI);
        const thickness_m = thicknessRatio * radius_m;
        const h_WPerM2K = (biot * 200) / radius_m;
        const sourceLength_m = Math.sqrt(sourceArea_m2 * sourceAspect);
        const plateLength_m = Math.sqrt(plateArea_m2 * plateAspect);
        const exact = spreadingSeries_KPerW(
          {
            sourceLength_m,
            sourceWidth_m: sourceArea_m2 / sourceLength_m,
            plateLength_m,
            plateWidth_m: plateArea_m2 / plateLength_m,
            thickness_m,
            k_WPerMK: 200,
            h_WPerM2K,
          },
          'peak',
          100,
        );
        const closed = spreadingPeak_KPerW(
          prepareSpreading(sourceArea_m2, plateArea_m2, thickness_m),
          200,
          h_WPerM2K,
        );
        expect(closed / exact).toBeGreaterThan(0.9);
        expect(closed / exact).toBeLessThan(1.24);
      }),
      runs,
    );
  });
});
