import { describe, expect, test } from 'vitest';
import { airProperties, createAirProperties } from '../../../src/core/air/airProperties.ts';
import { bankGeometry } from '../../../src/core/system/geometry.ts';
import { ordinaryRun } from '../../../src/core/system/input.ts';
import { solveSystem } from '../../../src/core/system/solveSystem.ts';
import { defaultDesign } from '../../../src/model/defaults.ts';
import type { Design } from '../../../src/model/design.ts';
import { toCore } from '../../../src/model/toCore.ts';
import { coolestFirst } from '../../../src/studies/sizing/bestHeight.ts';
import { finSets } from '../../../src/studies/sizing/finRules.ts';
import { searchSet } from '../../../src/studies/sizing/finSizing.ts';
import type { Solve } from '../../../src/studies/sizing/standing.ts';
import { published } from '../../helpers/published.ts';

const thin_m = 1e-6;
const nothing = 1e-9;

/** One sink under a fan whose pressure does not fall: nothing else in the way of the air, nothing else in the way of the heat. */
function bareSink(length_m: number, dp_Pa: number, width_m: number, finHeight_m: number): Design {
  const { fan, sink, plenum, baffle, box, inlet, outlet, room, load, positions, secondFace } = defaultDesign;
  const design: Design = {
    ...defaultDesign,
    room: { ...room, T_K: 298.15, relativeHumidity: 0 },
    load: { ...load, atWorst: false },
    positions: positions.slice(0, 1).map((position) => ({ ...position, power_W: 0.05 })),
    sink: { ...sink, length_m, width_m, finHeight_m, finThickness_m: thin_m, last: false },
    secondFace: { ...secondFace, way: 'free' },
    fan: {
      ...fan,
      start_V: fan.supply_V,
      power_W: 0,
      size_m: 1,
      opening_m: 0.9,
      hub_m: 0.01,
      curve: [
        { flow_m3PerS: 0, dp_Pa },
        { flow_m3PerS: 5, dp_Pa: 0.9999 * dp_Pa },
      ],
    },
    inlet: { ...inlet, guard: { ...inlet.guard, kind: 'none' } },
    plenum: { ...plenum, height_m: 1 },
    baffle: { ...baffle, fitted: false },
    outlet: { ...outlet, kind: 'none' },
    box: { ...box, width_m, headroom_m: 0, tilt_rad: Math.PI / 2 },
  };
  return { ...design, box: { ...design.box, length_m: bankGeometry(toCore(design)).row_m } };
}

/** Perfect metal, and losses, spreading, walls and radiation that count for nothing. */
const solve: Solve = (design) => {
  const input = toCore(design);
  const factors = {
    ...input.factors,
    minorLoss: nothing,
    slotLoss: nothing,
    spreading: nothing,
    outsideHeat: nothing,
    emissivity: nothing,
  };
  const sink = { ...input.sink, k_WPerMK: 1e12 };
  return solveSystem({ ...input, sink, factors }, { ...ordinaryRun, pulses: false });
};

/** Gap of the coolest set over length, times Be^¼, as the sizer's own search finds it. */
function constantFound(length_m: number, dp_Pa: number, width_m: number, finHeight_m: number): number {
  const design = bareSink(length_m, dp_Pa, width_m, finHeight_m);
  const rules = {
    cutters_m: [length_m / 100],
    depthRatio: 1e6,
    thicknesses_m: [thin_m],
    leastThickness_m: 0,
    leastHeight_m: finHeight_m,
    mostHeight_m: finHeight_m,
    mostSound_dBA: null,
    mostPressure_Pa: null,
  };
  const searched = finSets(design, rules).map((set) =>
    searchSet(design, { ask: 'film', margin_K: 0 }, rules, set, solve),
  );
  const best = coolestFirst(searched.flatMap(({ best: found }) => found ?? []))[0];
  if (!best) throw new Error('some set has an answer');
  const air = createAirProperties();
  airProperties(air, 298.15, 101_325, 1);
  const diffusivity_m2PerS = air.k_WPerMK / (air.rho_kgPerM3 * air.cp_JPerKgK);
  const bejan = (best.pressure_Pa * length_m * length_m) / (air.mu_PaS * diffusivity_m2PerS);
  return (best.gap_m / length_m) * bejan ** 0.25;
}

// b/L = C·Be^−¼ at a given pressure; C is 2.73 where the two asymptotes cross, 3.03 of the full solution. The search knows
// nothing of it: it tries counts of fins on a whole box.
describe('fins without anything else in the way (Bejan & Sciubba 1992)', () => {
  const bejan = published({
    source: 'bejanSciubba1992',
    where: 'constant of the full solution',
    kind: 'from memory',
    methods: ['frictionApparent', 'nusseltDeveloping', 'airNetwork'],
  });
  const boxes = [
    [0.05, 20, 0.2, 0.1],
    [0.05, 80, 0.1, 0.1],
    [0.1, 5, 0.4, 0.2],
    [0.02, 5, 0.1, 0.05],
  ] as const;
  test.each(boxes)('%d m at %d Pa: the best gap is 3.03·L·Be^−¼', (...box) => {
    const found = constantFound(...box);
    expect(found).toBeGreaterThan(2.73);
    bejan.says('constant', found, '3.03', {
      within: 0.02,
      because:
        'one fin more or less moves the gap by about 1 %, and the optimum is flat: friction and heat transfer here are closed forms, 3 to 4 % off the boundary-layer solution',
    });
  });
});
