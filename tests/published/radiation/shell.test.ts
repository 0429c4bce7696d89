import { describe, expect, test } from 'vitest';
import { fansStopped, type SystemInput } from '../../../src/core/system/input.ts';
import type { SinkOutcome, Solved } from '../../../src/core/system/outcome.ts';
import { published } from '../../helpers/published.ts';
import { sampleInput } from '../../helpers/sampleInput.ts';
import { solved } from '../../helpers/solved.ts';

// A box that lies flat, its fans stopped: no draught, so that heat leaves by conduction through still air, by radiation and,
// outside, by free convection alone.
const laws = published({
  source: 'ownComputation',
  where:
    'the plain laws written out beside the check and solved by halving: Stefan–Boltzmann with the CODATA constant, conduction k/b, Churchill & Chu (1975) as in Incropera, eq. 9.26',
  kind: 'computed elsewhere',
  methods: ['radiationFlux', 'facingEmissivity', 'narrowGap', 'nusseltVerticalPlateChurchillChu1975'],
});
const properties = 'air properties as printed, to five digits';

const sigma = 5.670374419e-8;
const room_K = 298.15;
/** Dry air at 298.15 K and 101 325 Pa, US Standard Atmosphere 1976 and ideal gas, worked in a separate program. */
const air = { k: 0.026108, nu: 1.8372e-5 / 1.18391, prandtl: 0.70726 };

const sheet = { thick_m: 3e-3, k: 0.18, emissivity: 0.9 };
const sink = { length_m: 50e-3, width_m: 40e-3, finHeight_m: 20e-3, plate_m: 2e-3 };
const bay_m = 30e-3;
const endBay_m = 40e-3;

function lying(over: { emissivity: number; outsideHeat: number; outlet: 'ownLoss' | 'none' }): SystemInput {
  const base = sampleInput(1, 2);
  const row = sampleInput(1).positions[0]?.part;
  if (!row) throw new Error('one resistor');
  const depth_m = sink.finHeight_m + sink.plate_m;
  const stack_m = row.coating_m + row.thickness_m + 2 * base.bond.filament_m;
  return {
    ...base,
    room: { ...base.room, relativeHumidity: 0 },
    sink: {
      ...base.sink,
      ...sink,
      k_WPerMK: 1e5,
      finThickness_m: 1e-3,
      finCount: 9,
      emissivity: over.emissivity,
    },
    secondFace: { ...base.secondFace, way: 'bonded' },
    baffle: null,
    box: {
      ...base.box,
      tilt_rad: Math.PI / 2,
      width_m: sink.width_m + 2 * bay_m,
      length_m: 2 * depth_m + stack_m + 2 * endBay_m,
      sheet_m: sheet.thick_m,
      sheet_WPerMK: sheet.k,
      sheetEmissivity: sheet.emissivity,
    },
    outlet: { kind: over.outlet, freeShare: 1, loss: 1, blocked: 0 },
    factors: { ...base.factors, outsideHeat: over.outsideHeat },
  };
}

function halve(low: number, high: number, tooHigh: (value: number) => boolean): number {
  let [from, to] = [low, high];
  for (let i = 0; i < 100; i++) {
    const middle = (from + to) / 2;
    if (tooHigh(middle)) to = middle;
    else from = middle;
  }
  return from;
}

/** Nusselt number of an upright plate, all Rayleigh numbers. */
function churchillChu(outer_K: number): number {
  const rayleigh = (9.80665 * (outer_K - room_K) * sink.length_m ** 3 * air.prandtl) / (room_K * air.nu ** 2);
  return (0.825 + (0.387 * rayleigh ** (1 / 6)) / (1 + (0.492 / air.prandtl) ** (9 / 16)) ** (8 / 27)) ** 2;
}

/** What the walls beside an end sink at this plate temperature take, and how warm they are. */
function walls(plate_K: number, emissivity: number, outsideHeat: number) {
  const sides_m2 = 2 * (sink.finHeight_m + sink.plate_m) * sink.length_m;
  const end_m2 = sink.width_m * sink.length_m;
  const facing = 1 / (1 / emissivity + 1 / sheet.emissivity - 1);
  const outFrom = (wall_K: number) => {
    const outside = (outer_K: number) =>
      sheet.emissivity * sigma * (outer_K ** 4 - room_K ** 4) +
      ((outsideHeat * churchillChu(outer_K) * air.k) / sink.length_m) * (outer_K - room_K);
    const outer_K = halve(
      room_K,
      wall_K,
      (middle) => outside(middle) > (sheet.k / sheet.thick_m) * (wall_K - middle),
    );
    return { outer_K, out_W: (sides_m2 + end_m2) * outside(outer_K) };
  };
  const into_W = (wall_K: number) =>
    (sides_m2 + end_m2) * facing * sigma * (plate_K ** 4 - wall_K ** 4) +
    air.k * (sides_m2 / bay_m + end_m2 / endBay_m) * (plate_K - wall_K);
  const wall_K = halve(room_K, plate_K, (middle) => outFrom(middle).out_W > into_W(middle));
  return { wall_K, ...outFrom(wall_K) };
}

const plateOf = (each: SinkOutcome | null | undefined) => each?.after_K ?? each?.before_K ?? Number.NaN;
const sinksOf = ({ heat }: Solved) => heat.sinks.map((each) => ({ each, plate_K: plateOf(each) }));

describe('a box that lies flat without fans', () => {
  test.each([
    [0.1, 0],
    [0.85, 0],
    [1, 0],
    [0.1, 1],
    [0.85, 1],
  ])(
    'sinks of emissivity %f, free convection outside times %f: its walls take all watts',
    (emissivity, outsideHeat) => {
      const outcome = solved(lying({ emissivity, outsideHeat, outlet: 'ownLoss' }), fansStopped);
      expect(outcome.air.massFlow_kgPerS).toBe(0);
      expect(outcome.heat.carried_W).toBeLessThan(1e-9);
      let sum_W = 0;
      for (const [i, { each, plate_K }] of sinksOf(outcome).entries()) {
        const { wall_K, outer_K, out_W } = walls(plate_K, emissivity, outsideHeat);
        const near = { off: 0.02, because: properties };
        const beside = `beside sink ${i + 1}`;
        laws.says(`wall ${beside}, inside [K]`, each?.facing_K ?? 0, wall_K.toFixed(3), near);
        laws.says(`wall ${beside}, outside [K]`, each?.outside_K ?? 0, outer_K.toFixed(3), near);
        sum_W += out_W;
      }
      laws.says('heat of both walls [W]', sum_W, '2', { within: 5e-4, because: properties });
    },
  );

  test('with an open top the channels radiate the rest: as a black opening where the fins are black', () => {
    const outcome = solved(lying({ emissivity: 1, outsideHeat: 0, outlet: 'none' }), fansStopped);
    let sum_W = 0;
    for (const { plate_K } of sinksOf(outcome)) {
      const opening_m2 = sink.width_m * sink.finHeight_m;
      sum_W += walls(plate_K, 1, 0).out_W + opening_m2 * sigma * (plate_K ** 4 - room_K ** 4);
    }
    laws.says('heat of walls and openings [W]', sum_W, '2', { within: 5e-4, because: properties });
    expect(outcome.heat.shell_W).toBeCloseTo(2, 6);
  });
});
