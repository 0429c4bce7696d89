import fc from 'fast-check';
import { bankGeometry } from '../../src/core/system/geometry.ts';
import { defaultDesign } from '../../src/model/defaults.ts';
import type { Design } from '../../src/model/design.ts';
import { type CountField, fieldAt, type QuantityField } from '../../src/model/fields.ts';
import { toCore } from '../../src/model/toCore.ts';
import { oneReadingEach } from './readings.ts';

/** `hard`: anything the form takes. `usual`: what a workshop would build. */
export type Flavour = 'hard' | 'usual';

/** Positions and parts of a random design; the hard limits themselves are 64 and 32. */
export interface Sizes {
  readonly mostPositions?: number;
  readonly mostParts?: number;
}

/**
 * Random designs that the schema accepts and `checkDesign` has nothing against, made to fit rather than thrown away:
 * values are drawn within their bounds, then measures that depend on others are drawn within what those leave.
 */
export function arbitraryDesign(
  flavour: Flavour = 'hard',
  { mostPositions = 12, mostParts = 3 }: Sizes = {},
): fc.Arbitrary<Design> {
  const draw = drawer(flavour);
  const part = fc.record({
    name: fc.string({ maxLength: 12 }),
    R_Ohm: draw.log('parts[].R_Ohm'),
    tolerance: draw.even('parts[].tolerance'),
    rated_W: draw.log('parts[].rated_W'),
    fullPowerUpTo_K: draw.even('parts[].fullPowerUpTo_K'),
    zeroPowerAt_K: draw.even('parts[].zeroPowerAt_K'),
    deratedBy: fc.constantFrom('terminals', 'air', 'film'),
    tcr_perK: draw.even('parts[].tcr_perK'),
    tcr2_perK2: draw.even('parts[].tcr2_perK2'),
    elementLimit_V: draw.log('parts[].elementLimit_V'),
    length_m: draw.log('parts[].length_m'),
    width_m: draw.log('parts[].width_m'),
    thickness_m: draw.log('parts[].thickness_m'),
    ceramic_WPerMK: draw.log('parts[].ceramic_WPerMK'),
    ceramicHeat_JPerM3K: draw.log('parts[].ceramicHeat_JPerM3K'),
    coating_m: draw.even('parts[].coating_m'),
    coating_WPerMK: draw.log('parts[].coating_WPerMK'),
  });
  const grille = (path: string) =>
    fc.record({
      kind: fc.constantFrom('none', 'wire', 'punched', 'square', 'ownLoss'),
      freeShare: draw.even(`${path}.freeShare`),
      loss: draw.even(`${path}.loss`),
    });
  const raw = fc.record({
    title: fc.string({ maxLength: 20 }),
    variant: fc.string({ maxLength: 20 }),
    room: fc.record({
      T_K: draw.even('room.T_K'),
      pressureFrom: fc.constantFrom('altitude', 'barometer'),
      altitude_m: draw.even('room.altitude_m'),
      pressure_Pa: draw.even('room.pressure_Pa'),
      relativeHumidity: draw.even('room.relativeHumidity'),
      listening_m: draw.log('room.listening_m'),
    }),
    load: fc.record({
      excitation: fc.constantFrom(
        'wattsEach',
        'seriesVolts',
        'seriesAmps',
        'parallelVolts',
        'parallelAmps',
        'switched',
      ),
      supply_V: draw.even('load.supply_V'),
      supply_A: draw.even('load.supply_A'),
      supplyTolerance: draw.even('load.supplyTolerance'),
      duty: draw.even('load.duty'),
      period_s: draw.log('load.period_s'),
      atWorst: fc.boolean(),
    }),
    parts: fc.array(part, { minLength: 1, maxLength: mostParts }),
    positions: fc.array(
      fc.record({
        part: fc.nat(31),
        on: fc.boolean(),
        flipped: fc.boolean(),
        power_W: draw.even('positions[].power_W'),
      }),
      { minLength: 1, maxLength: mostPositions },
    ),
    sink: fc.record({
      material: fc.constant('invented alloy'),
      k_WPerMK: draw.log('sink.k_WPerMK'),
      heat_JPerM3K: draw.log('sink.heat_JPerM3K'),
      length_m: draw.log('sink.length_m'),
      width_m: draw.log('sink.width_m'),
      finHeight_m: draw.log('sink.finHeight_m'),
      finThickness_m: draw.log('sink.finThickness_m'),
      finCount: draw.whole('sink.finCount'),
      plate_m: draw.log('sink.plate_m'),
      emissivity: draw.even('sink.emissivity'),
      first: fc.boolean(),
      last: fc.boolean(),
    }),
    bond: fc.record({
      material: fc.constant('invented adhesive'),
      sheetK_WPerMK: draw.log('bond.sheetK_WPerMK'),
      designShare: draw.even('bond.designShare'),
      filament_m: draw.log('bond.filament_m'),
      filament_WPerMK: draw.log('bond.filament_WPerMK'),
      filamentLength_m: draw.even('bond.filamentLength_m'),
      voidShare: draw.even('bond.voidShare'),
      contact_m2KPerW: draw.even('bond.contact_m2KPerW'),
      serviceLimit_K: draw.even('bond.serviceLimit_K'),
      glassTransition_K: draw.even('bond.glassTransition_K'),
    }),
    secondFace: fc.record({
      way: fc.constantFrom('tabs', 'bonded', 'free'),
      tabCount: draw.whole('secondFace.tabCount'),
      tabWidth_m: draw.log('secondFace.tabWidth_m'),
      tabThickness_m: draw.log('secondFace.tabThickness_m'),
      tabLength_m: draw.even('secondFace.tabLength_m'),
      tab_WPerMK: draw.log('secondFace.tab_WPerMK'),
      tabLanding_m: draw.log('secondFace.tabLanding_m'),
      solder_m: draw.log('secondFace.solder_m'),
      solder_WPerMK: draw.log('secondFace.solder_WPerMK'),
      terminalLength_m: draw.log('secondFace.terminalLength_m'),
    }),
    fan: fc.record({
      name: fc.constant('invented fan'),
      sideBySide: mostly(1, draw.whole('fan.sideBySide')),
      inARow: mostly(1, draw.whole('fan.inARow')),
      size_m: draw.log('fan.size_m'),
      depth_m: draw.log('fan.depth_m'),
      inletSpace_m: draw.even('fan.inletSpace_m'),
      supplySag: mostly(0, draw.even('fan.supplySag')),
      speedLoss: mostly(0, draw.even('fan.speedLoss')),
      ...fanKind(flavour, 'fan'),
    }),
    moreFans: mostly(
      [],
      fc.array(
        fc.record({
          name: fc.constant('invented other fan'),
          place: fc.constantFrom('beside', 'behind'),
          ...fanKind(flavour, 'moreFans[]'),
        }),
        { maxLength: flavour === 'hard' ? 3 : 1 },
      ),
    ),
    inlet: fc.record({
      guard: grille('inlet.guard'),
      guardBlocked: mostly(0, draw.even('inlet.guardBlocked')),
      filter: fc.boolean(),
      filterLinear_PaSPerM: draw.even('inlet.filterLinear_PaSPerM'),
      filterQuadratic_PaS2PerM2: draw.even('inlet.filterQuadratic_PaS2PerM2'),
      filterBlocked: mostly(0, draw.even('inlet.filterBlocked')),
    }),
    plenum: fc.record({
      height_m: draw.log('plenum.height_m'),
      neckAngle_rad: draw.even('plenum.neckAngle_rad'),
      neckLength_m: draw.even('plenum.neckLength_m'),
    }),
    baffle: fc.record({
      fitted: fc.boolean(),
      sheet_m: draw.log('baffle.sheet_m'),
      slotWidth_m: draw.log('baffle.slotWidth_m'),
      standOff_m: draw.even('baffle.standOff_m'),
      sideClearance_m: draw.even('baffle.sideClearance_m'),
      endClearance_m: draw.even('baffle.endClearance_m'),
      collar_m: draw.log('baffle.collar_m'),
      leakGap_m: draw.even('baffle.leakGap_m'),
    }),
    box: fc.record({
      material: fc.constant('invented sheet'),
      sheet_m: draw.log('box.sheet_m'),
      length_m: draw.log('box.length_m'),
      width_m: draw.log('box.width_m'),
      headroom_m: draw.even('box.headroom_m'),
      tilt_rad: mostly(0, draw.even('box.tilt_rad')),
      sheet_WPerMK: draw.log('box.sheet_WPerMK'),
      sheetEmissivity: draw.even('box.sheetEmissivity'),
      sheetHeat_JPerM3K: draw.log('box.sheetHeat_JPerM3K'),
      softening_K: draw.even('box.softening_K'),
    }),
    outlet: grille('outlet'),
    extras: fc.array(arbitraryExtra(flavour), { maxLength: flavour === 'hard' ? 3 : 1 }),
    limits: fc.record({
      joint_K: draw.even('limits.joint_K'),
      exhaust_K: draw.even('limits.exhaust_K'),
      touchable: fc.boolean(),
      touch_K: draw.even('limits.touch_K'),
      wall_K: draw.even('limits.wall_K'),
      soundJudged: fc.boolean(),
      sound_dBA: draw.even('limits.sound_dBA'),
      settled: draw.log('limits.settled'),
      spareFactor: draw.even('limits.spareFactor'),
    }),
    cutting: fc.record({
      boxes: draw.whole('cutting.boxes'),
      joint: fc.constantFrom('butt', 'slotted'),
      tab_m: draw.log('cutting.tab_m'),
      fit_m: draw.even('cutting.fit_m'),
      cutter_m: draw.log('cutting.cutter_m'),
      edge_m: draw.even('cutting.edge_m'),
      fanHole_m: draw.log('cutting.fanHole_m'),
      fanPitch_m: mostly(0, draw.even('cutting.fanPitch_m')),
      wireHole_m: mostly(0, draw.even('cutting.wireHole_m')),
      stockLength_m: draw.log('cutting.stockLength_m'),
      stockWidth_m: draw.log('cutting.stockWidth_m'),
    }),
    /** Where a measure has to give way, how much of the room that is left it takes. */
    share: fc.array(fc.double({ min: 0.02, max: 0.98, noNaN: true }), { minLength: 12, maxLength: 12 }),
  });
  return raw.map(({ share, ...drawn }) => {
    const design = { ...defaultDesign, ...drawn, readings: oneReadingEach, invented: true } as Design;
    return makeFit(
      flavour === 'usual' ? makeOrdinary(design, share) : makeTurn(design, share),
      share,
      flavour,
    );
  });
}

/** What the first fan and any other have alike; `fan` or `moreFans[]` in front of the names. */
function fanKind(flavour: Flavour, place: string) {
  const draw = drawer(flavour);
  return {
    rated_V: draw.even(`${place}.rated_V`),
    supply_V: draw.even(`${place}.supply_V`),
    start_V: draw.even(`${place}.start_V`),
    power_W: draw.even(`${place}.power_W`),
    rotation_PerS: draw.log(`${place}.rotation_PerS`),
    opening_m: draw.log(`${place}.opening_m`),
    hub_m: draw.even(`${place}.hub_m`),
    blades: draw.whole(`${place}.blades`),
    standingLoss: draw.even(`${place}.standingLoss`),
    sound_dBA: draw.even(`${place}.sound_dBA`),
    soundAt_m: draw.log(`${place}.soundAt_m`),
    curveSource: fc.constant('an invented sheet'),
    curve: arbitraryCurve(flavour),
  };
}

/** Three times in four the ordinary value: boxes with all the trouble at once say little about any of it. */
function mostly<T>(ordinary: T, other: fc.Arbitrary<T>): fc.Arbitrary<T> {
  return fc.oneof({ weight: 3, arbitrary: fc.constant(ordinary) }, { weight: 1, arbitrary: other });
}

/** A falling curve, now and then with a dip on the way. */
export function arbitraryCurve(flavour: Flavour = 'hard'): fc.Arbitrary<Design['fan']['curve']> {
  const [leastFlow, mostFlow] = flavour === 'hard' ? [1e-5, 4.9] : [1e-3, 0.08];
  const [leastPressure, mostPressure] = flavour === 'hard' ? [0.1, 19_000] : [15, 300];
  const steps = fc.array(fc.tuple(between(0.1, 1), between(0.02, 1), between(0, 1)), {
    minLength: 1,
    maxLength: 9,
  });
  return fc
    .tuple(
      logBetween(leastFlow, mostFlow),
      logBetween(leastPressure, mostPressure),
      steps,
      fc.boolean(),
      fc.boolean(),
    )
    .map(([flow, pressure, rows, dips, endsAtNothing]) => {
      const wide = rows.reduce((sum, [step]) => sum + step, 0);
      const deep = rows.reduce((sum, [, fall]) => sum + fall, 0);
      const end = endsAtNothing ? 0 : 0.05;
      const points = [{ flow_m3PerS: 0, dp_Pa: pressure }];
      let along = 0;
      let down = 0;
      rows.forEach(([step, fall, dip], index) => {
        along += step / wide;
        down += fall / deep;
        const isLast = index === rows.length - 1;
        const level = isLast ? end : end + (1 - end) * Math.max(0.01, 1 - down);
        const dp_Pa = pressure * (dips && dip < 0.3 && !isLast ? Math.max(end + 0.005, level * 0.5) : level);
        points.push({ flow_m3PerS: isLast ? flow : flow * along, dp_Pa });
      });
      return points;
    });
}

function arbitraryExtra(flavour: Flavour): fc.Arbitrary<Design['extras'][number]> {
  const draw = drawer(flavour);
  const points = fc.array(fc.tuple(between(0.05, 1), between(0.05, 1)), { maxLength: 5 }).map((steps) => {
    let flow_m3PerS = 0;
    let dp_Pa = 0;
    return steps.map(([flow, rise]) => {
      flow_m3PerS += 0.01 * flow;
      dp_Pa += 20 * rise;
      return { flow_m3PerS, dp_Pa };
    });
  });
  return fc.record({
    name: fc.constant('invented loss'),
    place: fc.constantFrom('inlet', 'plenum', 'outlet'),
    loss: draw.even('extras[].loss'),
    area_m2: draw.log('extras[].area_m2'),
    points,
  });
}

/** Nine fans in ten get volts enough to turn; bounds drawn one by one would leave every second one standing. */
function makeTurn(drawn: Design, share: readonly number[]): Design {
  const { fan } = drawn;
  if ((share[6] as number) > 0.9) return drawn;
  const turning = <T extends { start_V: number; supply_V: number }>(each: T): T => ({
    ...each,
    start_V: Math.min(each.start_V, each.supply_V),
  });
  return { ...drawn, fan: turning(fan), moreFans: drawn.moreFans.map(turning) };
}

/** A fan near its rated volts, parts of one decade, and watts that a chip can have: most such boxes have an answer. */
function makeOrdinary(drawn: Design, share: readonly number[]): Design {
  const { fan, load } = drawn;
  const take = (index: number) => share[index] as number;
  const first = drawn.parts[0] as Design['parts'][number];
  const parts = drawn.parts.map((part, index) => ({ ...part, R_Ohm: first.R_Ohm * (0.6 + 0.3 * index) }));
  const R_Ohm = within('parts[].R_Ohm', first.R_Ohm);
  // A quarter of a watt on each square millimetre is much for a bonded chip.
  const most_W = Math.min(6, ...parts.map((part) => 0.25e6 * part.length_m * part.width_m));
  const power_W = most_W * take(7);
  const count = drawn.positions.length;
  const volts = Math.sqrt(power_W * R_Ohm);
  const nearRated = <T extends { rated_V: number }>(fan: T) => ({
    ...fan,
    supply_V: fan.rated_V * (0.6 + 0.5 * take(8)),
    start_V: fan.rated_V * 0.6 * take(9),
  });
  return {
    ...drawn,
    parts,
    positions: drawn.positions.map((position) => ({
      ...position,
      power_W: Math.min(position.power_W, power_W),
    })),
    load: {
      ...load,
      supply_V: within('load.supply_V', load.excitation === 'seriesVolts' ? volts * count : volts),
      supply_A: within('load.supply_A', (volts / R_Ohm) * (load.excitation === 'parallelAmps' ? count : 1)),
    },
    fan: nearRated(fan),
    moreFans: drawn.moreFans.map(nearRated),
  };
}

/** Makes drawn measures fit one another, each within what its own limits allow. */
function makeFit(drawn: Design, share: readonly number[], flavour: Flavour): Design {
  const take = (index: number) => share[index] as number;
  const parts = drawn.parts.map((part) => ({
    ...part,
    zeroPowerAt_K: within(
      'parts[].zeroPowerAt_K',
      Math.max(part.zeroPowerAt_K, part.fullPowerUpTo_K + 5 + 80 * take(0)),
    ),
    length_m: Math.min(part.length_m, drawn.sink.width_m),
    width_m: Math.min(part.width_m, drawn.sink.length_m),
  }));
  const positions = drawn.positions.map((position) => ({ ...position, part: position.part % parts.length }));
  const least_m = (of: (part: Design['parts'][number]) => number) => Math.min(...parts.map(of));

  const sink = fitFins(drawn.sink, flavour);

  const bond = {
    ...drawn.bond,
    filamentLength_m: Math.min(
      drawn.bond.filamentLength_m,
      (least_m((part) => part.length_m * part.width_m) * take(1)) / drawn.bond.filament_m,
    ),
  };
  const secondFace = fitTabs(drawn, least_m, share);

  let design = shortenRow({ ...drawn, parts, positions, sink, bond, secondFace });
  const row_m = bankGeometry(toCore(design)).row_m;
  // An ordinary box is made for its bank; the drawn one may be any size that holds it.
  const [roomy, wide] = flavour === 'usual' ? [0, 0] : [drawn.box.length_m, drawn.box.width_m];
  const length_m = within('box.length_m', Math.max(roomy, row_m * (1 + 0.5 * take(3))));
  const width_m = within('box.width_m', Math.max(wide, sink.width_m * (1 + take(4))));
  const box = { ...drawn.box, length_m, width_m };
  const baffle = {
    ...drawn.baffle,
    slotWidth_m: Math.min(drawn.baffle.slotWidth_m, width_m),
    collar_m: Math.min(drawn.baffle.collar_m, sink.length_m),
    endClearance_m: Math.min(drawn.baffle.endClearance_m, (length_m - row_m) / 2),
    sideClearance_m: Math.min(drawn.baffle.sideClearance_m, (width_m - sink.width_m) / 2),
  };
  const size_m = Math.max(drawn.fan.size_m, drawn.fan.opening_m);
  const withSmallHub = <T extends { hub_m: number; opening_m: number }>(fan: T): T => ({
    ...fan,
    hub_m: Math.min(fan.hub_m, fan.opening_m * 0.9 * take(5)),
  });
  design = {
    ...design,
    box,
    baffle,
    fan: { ...withSmallHub(drawn.fan), size_m },
    moreFans: drawn.moreFans.map(withSmallHub),
  };
  return design;
}

/** Fins with at least a tenth of a millimetre between them; ordinary ones, which air has to pass, with a whole one. */
function fitFins(sink: Design['sink'], flavour: Flavour): Design['sink'] {
  const gap_m = flavour === 'usual' ? 1e-3 : 1e-4;
  const thinnest = flavour === 'usual' ? 4e-4 : fieldBounds('sink.finThickness_m')[0];
  const finCount = Math.min(sink.finCount, Math.floor((sink.width_m + gap_m) / (thinnest + gap_m)));
  const thickest = (sink.width_m - (finCount - 1) * gap_m) / finCount;
  return { ...sink, finCount, finThickness_m: Math.min(sink.finThickness_m, thickest) };
}

/** A row that the longest box can hold: fewer positions where the chips alone are too many, then lower fins. */
function shortenRow(design: Design): Design {
  let positions = design.positions;
  const stacks = () =>
    bankGeometry(toCore({ ...design, positions })).stack_m.reduce((sum, stack) => sum + stack, 0);
  while (positions.length > 1 && stacks() > 1.4) positions = positions.slice(0, -1);
  const { finHeight_m, plate_m } = design.sink;
  const each_m = (2.8 - stacks()) / (positions.length + 1);
  const scale = Math.min(1, each_m / (finHeight_m + 2 * plate_m));
  const sink = {
    ...design.sink,
    finHeight_m: within('sink.finHeight_m', finHeight_m * scale),
    plate_m: within('sink.plate_m', plate_m * scale),
  };
  return { ...design, positions, sink };
}

function fitTabs(
  drawn: Design,
  least_m: (of: (part: Design['parts'][number]) => number) => number,
  share: readonly number[],
) {
  const face = drawn.secondFace;
  const widthEach = (count: number) => least_m((part) => part.width_m) / Math.ceil(count / 2);
  const narrowest = fieldBounds('secondFace.tabWidth_m')[0];
  const tabCount = Math.min(
    face.tabCount,
    Math.max(1, 2 * Math.floor(least_m((part) => part.width_m) / narrowest)),
  );
  const tabWidth_m = Math.min(face.tabWidth_m, widthEach(tabCount));
  const plate_m2 = drawn.sink.length_m * drawn.sink.width_m;
  return {
    ...face,
    tabCount,
    tabWidth_m,
    tabLanding_m: Math.min(face.tabLanding_m, plate_m2 / (tabCount * tabWidth_m)),
    terminalLength_m: Math.min(
      face.terminalLength_m,
      (least_m((part) => part.length_m) / 2) * Math.max(0.3, share[2] as number),
    ),
  };
}

function drawer(flavour: Flavour) {
  const bounds = (pattern: string): readonly [number, number] => {
    const field = fieldAt(pattern) as QuantityField | CountField;
    return flavour === 'usual' && field.usual !== null ? field.usual : field.hard;
  };
  return {
    even: (pattern: string) => between(...bounds(pattern)),
    log: (pattern: string) => logBetween(...bounds(pattern)),
    whole: (pattern: string) => fc.noBias(fc.integer({ min: bounds(pattern)[0], max: bounds(pattern)[1] })),
  };
}

/** Even over the range, with both ends now and then: `fc.double` would draw half of all values from next to nothing. */
function between(min: number, max: number): fc.Arbitrary<number> {
  const steps = 1_000_000;
  return fc.oneof(
    {
      weight: 30,
      arbitrary: fc.noBias(fc.nat(steps)).map((step) => Math.min(max, min + ((max - min) * step) / steps)),
    },
    { weight: 1, arbitrary: fc.constant(min) },
    { weight: 1, arbitrary: fc.constant(max) },
  );
}

function logBetween(min: number, max: number): fc.Arbitrary<number> {
  return between(Math.log(min), Math.log(max)).map((exponent) =>
    Math.min(max, Math.max(min, Math.exp(exponent))),
  );
}

function fieldBounds(pattern: string): readonly [number, number] {
  return (fieldAt(pattern) as QuantityField | CountField).hard;
}

function within(pattern: string, value: number): number {
  const [low, high] = fieldBounds(pattern);
  return Math.min(high, Math.max(low, value));
}
