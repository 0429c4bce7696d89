import { describe, expect, test } from 'vitest';
import { airProperties, createAirProperties } from '../../../../src/core/air/airProperties.ts';
import { plateSlope } from '../../../../src/core/freeConvection/nusseltVerticalPlateChurchillChu1975.ts';
import { channelEmissivity } from '../../../../src/core/radiation/channelEmissivity.ts';
import { radiationFlux_WPerM2 } from '../../../../src/core/radiation/radiationFlux_WPerM2.ts';
import { bankGeometry } from '../../../../src/core/system/geometry.ts';
import type { GrilleInput, SystemInput } from '../../../../src/core/system/input.ts';
import {
  createShellHeat,
  outsidePerK,
  restingWall_K,
  shellFaces,
  updateShell,
} from '../../../../src/core/system/shell.ts';
import { sampleInput } from '../../../helpers/sampleInput.ts';

const base = sampleInput(3);
const facesOf = (input: SystemInput, s = 1) => shellFaces(input, bankGeometry(input), s);

describe('shellFaces', () => {
  // Sinks 25 × 25 mm, 14 mm deep with both plates, 12 mm with one; collar 20 mm high with 0.8 mm to it, bay 45 mm wide.
  test('of an inner sink are its two sides, behind the collar and above it', () => {
    const faces = facesOf(base);
    expect(faces.area_m2).toBeCloseTo(2 * 14e-3 * 25e-3, 15);
    expect(faces.collared_m2).toBeCloseTo(2 * 14e-3 * 20e-3, 15);
    expect(faces.areaOverGap_m).toBeCloseTo((2 * 14e-3 * 20e-3) / 0.8e-3 + (2 * 14e-3 * 5e-3) / 10e-3, 12);
    expect(faces.behind_m).toBeCloseTo(10e-3 - 0.8e-3 - 3e-3, 15);
  });

  test('of an end sink are its end as well', () => {
    expect(facesOf(base, 0).area_m2).toBeCloseTo((2 * 12e-3 + 25e-3) * 25e-3, 15);
    expect(facesOf(base, 3).area_m2).toBeCloseTo(facesOf(base, 0).area_m2, 15);
  });

  test('without a baffle have the bay before them, and no collar', () => {
    const faces = facesOf({ ...base, baffle: null });
    expect(faces.collared_m2).toBe(0);
    expect(faces.collarSheet_m).toBe(0);
    expect(faces.areaOverGap_m).toBeCloseTo(faces.area_m2 / 10e-3, 12);
  });

  test('with no room at all still keep a film of air', () => {
    const tight = {
      ...base,
      baffle: base.baffle && { ...base.baffle, sideClearance_m: 0, endClearance_m: 0 },
    };
    expect(Number.isFinite(facesOf(tight).areaOverGap_m)).toBe(true);
    expect(facesOf(tight).areaOverGap_m).toBeGreaterThan(facesOf(base).areaOverGap_m);
  });

  test('the room sees of the channels what the grille leaves free, and nothing behind a loss typed in', () => {
    const seen = (kind: GrilleInput['kind']) =>
      facesOf({ ...base, outlet: { ...base.outlet, kind } }).seen_m2;
    const deep = channelEmissivity(0.85, 25e-3 / bankGeometry(base).finGap_m);
    expect(seen('none')).toBeCloseTo(25e-3 * 10e-3 * deep, 12);
    expect(seen('punched')).toBeCloseTo(0.6 * seen('none'), 12);
    expect(seen('ownLoss')).toBe(0);
  });

  test('no factor makes a surface more than black', () => {
    const faces = facesOf({ ...base, factors: { ...base.factors, emissivity: 3 } });
    expect(faces.facing).toBe(1);
    expect(faces.wallToWall).toBe(1);
  });
});

const room = createAirProperties();
airProperties(room, 298.15, 101325, 1);
const around = (input: SystemInput, entering_K = 298.15) => ({
  input,
  room,
  entering_K,
  cp_JPerKgK: 1006,
  outsidePerK: outsidePerK(room, input.sink.length_m),
  outsideSlope: plateSlope(room.prandtl),
});

/** Conductances with the wall at rest at this plate, by rounds until nothing moves. */
function rested(input: SystemInput, plateRise_K: number, gapFlow = 0, entering_K = 298.15) {
  const faces = facesOf(input);
  const heat = createShellHeat();
  const surroundings = around(input, entering_K);
  let wall_K = plateRise_K / 2;
  for (let round = 0; round < 60; round++) {
    updateShell(heat, faces, surroundings, plateRise_K, wall_K, gapFlow);
    wall_K = restingWall_K(heat, plateRise_K, 298.15 - entering_K);
  }
  return { faces, heat, wall_K };
}

describe('updateShell', () => {
  test('a wall at rest passes on just what it gets', () => {
    for (const plate_K of [5, 40, 120]) {
      const { heat, wall_K } = rested(base, plate_K);
      const gets = (heat.radiation_WPerK + heat.toGap_WPerK / 2) * (plate_K - wall_K);
      const gives = heat.outwards_WPerK * wall_K - heat.outwardsOffset_W;
      expect(Math.abs(gets / gives - 1)).toBeLessThan(1e-9);
      expect(wall_K).toBeGreaterThan(0);
      expect(wall_K).toBeLessThan(plate_K);
    }
  });

  test('gives through sheet and outside what the same chain gives, solved by halving in this test', () => {
    // No baffle and no free convection outside: conduction and radiation alone, told from σT⁴ and k/b.
    const input: SystemInput = {
      ...base,
      baffle: null,
      factors: { ...base.factors, outsideHeat: 0 },
    };
    const { faces, heat, wall_K } = rested(input, 60);
    const plate = 298.15 + 60;
    const area = faces.area_m2;
    const facing = 1 / (1 / 0.85 + 1 / 0.9 - 1);
    const into = (wall: number) =>
      area * radiationFlux_WPerM2(facing, plate, wall) + (area * room.k_WPerMK * (plate - wall)) / 10e-3;
    const outOf = (wall: number) => {
      let [low, high] = [298.15, wall];
      for (let i = 0; i < 80; i++) {
        const outer = (low + high) / 2;
        const through = (0.18 / 3e-3) * (wall - outer);
        if (radiationFlux_WPerM2(0.9, outer, 298.15) > through) high = outer;
        else low = outer;
      }
      return { flux: area * radiationFlux_WPerM2(0.9, low, 298.15), outer: low };
    };
    let [low, high] = [298.15, plate];
    for (let i = 0; i < 80; i++) {
      const wall = (low + high) / 2;
      if (outOf(wall).flux > into(wall)) high = wall;
      else low = wall;
    }
    expect(wall_K).toBeCloseTo(low - 298.15, 6);
    expect(heat.outwards_WPerK * wall_K - heat.outwardsOffset_W).toBeCloseTo(into(low), 8);
    expect(heat.outerShare * wall_K).toBeCloseTo(outOf(low).outer - 298.15, 6);
  });

  test('radiates upwards as the fourth powers say, by a tangent that stands at them', () => {
    const { faces, heat } = rested(base, 80);
    expect(heat.upwards_WPerK * 80 - heat.upwardsOffset_W).toBeCloseTo(
      faces.seen_m2 * radiationFlux_WPerM2(1, 378.15, 298.15),
      9,
    );
    const slope =
      (radiationFlux_WPerM2(1, 378.15 + 0.01, 298.15) - radiationFlux_WPerM2(1, 378.15 - 0.01, 298.15)) /
      0.02;
    expect(heat.upwards_WPerK).toBeCloseTo(faces.seen_m2 * slope, 9);
  });

  test('counts from the room, whatever the air that enters', () => {
    const same = rested(base, 60);
    const warm = rested(base, 50, 0, 308.15); // the same plate, over air that is 10 K warmer
    expect(warm.wall_K + 10).toBeCloseTo(same.wall_K, 6);
    const given = (heat: typeof same.heat, over_K: number) =>
      heat.outwards_WPerK * over_K - heat.outwardsOffset_W;
    expect(given(warm.heat, warm.wall_K + 10)).toBeCloseTo(given(same.heat, same.wall_K), 9);
  });

  test('air that passes in the gap carries heat away and cools the wall, no more than the gap lets it have', () => {
    let before = Number.POSITIVE_INFINITY;
    for (const gapFlow of [0, 1e-7, 1e-6, 1e-5, 1e-3]) {
      const { heat, wall_K } = rested(base, 60, gapFlow);
      expect(wall_K).toBeLessThan(before);
      expect(heat.carry_WPerK).toBeLessThanOrEqual(2 * gapFlow * 1006 * 1.0001);
      before = wall_K;
    }
    expect(rested(base, 60, -1e-4).heat.carry_WPerK).toBe(0);
  });

  test('a thicker sheet, a wider gap and duller surfaces let less out', () => {
    const out = (input: SystemInput) => {
      const { heat, wall_K } = rested(input, 60);
      return heat.outwards_WPerK * wall_K - heat.outwardsOffset_W;
    };
    const baffle = base.baffle;
    if (!baffle) throw new Error('the sample has a baffle');
    for (const worse of [
      { ...base, box: { ...base.box, sheet_m: 6e-3 } },
      { ...base, baffle: { ...baffle, sideClearance_m: 2e-3 } },
      { ...base, sink: { ...base.sink, emissivity: 0.1 } },
      { ...base, box: { ...base.box, sheetEmissivity: 0.2 } },
      { ...base, factors: { ...base.factors, outsideHeat: 0.5 } },
    ])
      expect(out(worse)).toBeLessThan(out(base));
  });
});
