import type { Design } from './design.ts';
import { getAt, type Path, patternOf } from './path.ts';

export const defaultPart: Design['parts'][number] = {
  name: '10 Ω',
  R_Ohm: 10,
  tolerance: 0.01,
  rated_W: 3,
  fullPowerUpTo_K: 343.15,
  zeroPowerAt_K: 428.15,
  deratedBy: 'terminals',
  tcr_perK: 25e-6,
  tcr2_perK2: 0,
  elementLimit_V: 200,
  length_m: 0.00635,
  width_m: 0.00315,
  thickness_m: 0.0006,
  ceramic_WPerMK: 25,
  ceramicHeat_JPerM3K: 3.43e6,
  coating_m: 20e-6,
  coating_WPerMK: 0.5,
};

export const defaultPosition: Design['positions'][number] = { part: 0, on: true, flipped: false, power_W: 2 };

export const defaultExtra: Design['extras'][number] = {
  name: 'Extra loss',
  place: 'plenum',
  loss: 1,
  area_m2: 0.0016,
  points: [],
};

/** A further fan to begin with: of the kind of the first, under a name of its own. */
export function anotherFan(
  { name, sideBySide, inARow, size_m, depth_m, inletSpace_m, supplySag, speedLoss, ...kind }: Design['fan'],
  index: number,
): Design['moreFans'][number] {
  return { name: `Fan ${index + 2}`, place: 'beside', ...kind };
}

/** A complete, ordinary fan box to begin with: four chips between five sinks, a 60 mm fan, an ABS box. */
export const defaultDesign: Design = {
  format: 'throughfin-design',
  version: 5,
  title: 'New fan box',
  variant: '',
  revision: 'A',
  remark: '',
  invented: false,
  room: {
    T_K: 308.15,
    pressureFrom: 'altitude',
    altitude_m: 0,
    pressure_Pa: 101_325,
    relativeHumidity: 0.5,
    listening_m: 1,
  },
  load: {
    excitation: 'wattsEach',
    supply_V: 12,
    supply_A: 1,
    supplyTolerance: 0.02,
    duty: 1,
    period_s: 10,
    atWorst: true,
  },
  parts: [defaultPart],
  positions: Array.from({ length: 4 }, () => defaultPosition),
  sink: {
    material: 'aluminium 6063',
    k_WPerMK: 200,
    heat_JPerM3K: 2.42e6,
    length_m: 0.025,
    width_m: 0.025,
    finHeight_m: 0.01,
    finThickness_m: 0.0008,
    finCount: 9,
    plate_m: 0.002,
    emissivity: 0.85,
    first: true,
    last: true,
  },
  bond: {
    material: 'filled epoxy',
    sheetK_WPerMK: 1,
    designShare: 0.7,
    filament_m: 0.00015,
    filament_WPerMK: 0.25,
    filamentLength_m: 0.006,
    voidShare: 0.05,
    contact_m2KPerW: 0,
    serviceLimit_K: 403.15,
    glassTransition_K: 363.15,
  },
  secondFace: {
    way: 'tabs',
    tabCount: 2,
    tabWidth_m: 0.003,
    tabThickness_m: 0.0005,
    tabLength_m: 0.003,
    tab_WPerMK: 390,
    tabLanding_m: 0.004,
    solder_m: 0.0001,
    solder_WPerMK: 58,
    terminalLength_m: 0.0006,
  },
  fan: {
    name: '60 mm, 12 V, curve to be entered',
    sideBySide: 1,
    inARow: 1,
    inletSpace_m: 0.1,
    supplySag: 0,
    speedLoss: 0,
    rated_V: 12,
    supply_V: 12,
    start_V: 6,
    power_W: 2,
    rotation_PerS: 50,
    size_m: 0.06,
    opening_m: 0.057,
    hub_m: 0.028,
    depth_m: 0.025,
    blades: 7,
    standingLoss: 8,
    sound_dBA: 32,
    soundAt_m: 1,
    curveSource: '',
    curve: [
      { flow_m3PerS: 0, dp_Pa: 45 },
      { flow_m3PerS: 0.002, dp_Pa: 39 },
      { flow_m3PerS: 0.004, dp_Pa: 32 },
      { flow_m3PerS: 0.006, dp_Pa: 23 },
      { flow_m3PerS: 0.008, dp_Pa: 12 },
      { flow_m3PerS: 0.0097, dp_Pa: 0 },
    ],
  },
  moreFans: [],
  inlet: {
    guard: { kind: 'wire', freeShare: 0.7, loss: 1 },
    guardBlocked: 0,
    filter: false,
    filterLinear_PaSPerM: 4,
    filterQuadratic_PaS2PerM2: 1,
    filterBlocked: 0,
  },
  plenum: { height_m: 0.035, neckAngle_rad: 0.9, neckLength_m: 0.03 },
  baffle: {
    fitted: true,
    sheet_m: 0.003,
    slotWidth_m: 0.021,
    standOff_m: 0.003,
    sideClearance_m: 0.0008,
    endClearance_m: 0.0008,
    collar_m: 0.02,
    leakGap_m: 0.0001,
  },
  box: {
    material: 'ABS',
    sheet_m: 0.003,
    length_m: 0.09,
    width_m: 0.045,
    headroom_m: 0.01,
    tilt_rad: 0,
    sheet_WPerMK: 0.18,
    sheetEmissivity: 0.9,
    sheetHeat_JPerM3K: 1.47e6,
    softening_K: 353.15,
  },
  outlet: { kind: 'punched', freeShare: 0.6, loss: 1 },
  extras: [],
  limits: {
    joint_K: 398.15,
    exhaust_K: 343.15,
    touchable: false,
    touch_K: 333.15,
    wall_K: 350.15,
    soundJudged: false,
    sound_dBA: 45,
    settled: 1e-5,
    spareFactor: 1.25,
  },
  cutting: {
    boxes: 1,
    joint: 'butt',
    tab_m: 0.012,
    fit_m: 0.0001,
    cutter_m: 0.003,
    edge_m: 0.001,
    fanHole_m: 0.0045,
    fanPitch_m: 0,
    wireHole_m: 0,
    stockLength_m: 0.6,
    stockWidth_m: 0.4,
  },
  spreads: [],
  readings: { temperatures: [], pressures: [], flows: [], voltages: [], sounds: [] },
  fitted: {
    readings: 0,
    bondFactor: 1,
    bondWithin: 0,
    slotFactor: 1,
    slotWithin: 0,
    fanFactor: 1,
    fanWithin: 0,
    emissivityFactor: 1,
    emissivityWithin: 0,
    leakWithin_m: 0,
  },
};

const rowDefaults: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  'positions[]': defaultPosition,
  'parts[]': defaultPart,
  'extras[]': defaultExtra,
  'moreFans[]': anotherFan(defaultDesign.fan, 0),
};

/** What a new design has in this place; `undefined` where there is no such thing: a point of a curve, a name of a row. */
export function defaultAt(path: Path): unknown {
  const pattern = patternOf(path);
  if (/(?:curve|points)\[\]/.test(pattern)) return undefined;
  const [, row, key] = /^(\w+\[\])\.(\w+)$/.exec(pattern) ?? [];
  if (row === undefined || key === undefined) return getAt(defaultDesign, path);
  return key === 'name' ? undefined : rowDefaults[row]?.[key];
}
