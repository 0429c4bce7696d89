import type { LoadKind } from '../core/resistor/splitLoad.ts';
import {
  type ExtraLossInput,
  type Factors,
  type FilterInput,
  type GrilleInput,
  type RoomInput,
  type SystemInput,
  unitFactors,
} from '../core/system/input.ts';
import type { Design } from './design.ts';

/** What the core is told of a design that passes the schema and `checkDesign`. */
export function toCore(design: Design): SystemInput {
  const { load, sink, bond, baffle, inlet, plenum, box, limits, parts } = design;
  return {
    room: roomOf(design.room),
    load: {
      excitation: load.excitation,
      supply: supplyOf(load),
      supplyTolerance: load.supplyTolerance,
      duty: load.duty,
      atWorst: load.atWorst,
      scale: 1,
      period_s: load.period_s,
    },
    positions: design.positions.map(({ part, on, flipped, power_W }) => ({
      part: parts[part] as Design['parts'][number],
      on,
      flipped,
      power_W,
    })),
    sink,
    hasFirstSink: sink.first,
    hasLastSink: sink.last,
    bond: { ...bond, k_WPerMK: bond.sheetK_WPerMK * bond.designShare },
    secondFace: design.secondFace,
    fan: { ...design.fan, others: design.moreFans, outletSpace_m: plenum.neckLength_m + box.length_m },
    inlet: { guard: grilleOf(inlet.guard, inlet.guardBlocked), filter: filterOf(inlet) },
    plenum: { height_m: plenum.height_m, neckAngle_rad: plenum.neckAngle_rad, length_m: box.length_m },
    baffle: baffle.fitted ? closeGaps(baffle) : null,
    box,
    outlet: grilleOf(design.outlet, 0),
    extras: design.extras.map(extraOf),
    limits: {
      joint_K: limits.joint_K,
      sheet_K: box.softening_K,
      exhaust_K: limits.exhaust_K,
      touchable: limits.touchable,
      touch_K: limits.touch_K,
      wall_K: limits.wall_K,
      sound_dBA: limits.sound_dBA,
      soundJudged: limits.soundJudged,
      settled: limits.settled,
      spareFactor: limits.spareFactor,
    },
    factors: factorsOf(design.fitted),
  };
}

/** What was fitted to readings takes the place of handbook values; where nothing was, these stand. */
function factorsOf({ bondFactor, slotFactor, fanFactor, emissivityFactor }: Design['fitted']): Factors {
  return {
    ...unitFactors,
    bondConductivity: bondFactor,
    slotLoss: slotFactor,
    fanFlow: fanFactor,
    emissivity: emissivityFactor,
  };
}

function roomOf(room: Design['room']): RoomInput {
  return { ...room, pressure_Pa: room.pressureFrom === 'barometer' ? room.pressure_Pa : null };
}

export type SupplyKind = 'volts' | 'amps' | null;

/** Which supply a way of loading reads. */
export const supplyKindOf: Readonly<Record<LoadKind, SupplyKind>> = {
  wattsEach: null,
  seriesVolts: 'volts',
  seriesAmps: 'amps',
  parallelVolts: 'volts',
  parallelAmps: 'amps',
  switched: 'volts',
};

function supplyOf(load: Design['load']): number {
  const kind = supplyKindOf[load.excitation];
  return kind === null ? 0 : kind === 'volts' ? load.supply_V : load.supply_A;
}

/** Gaps below a nanometre, and losses as small beside one, are none: nobody can cut them, and no network needs them. */
const least = 1e-9;

function orNone(value: number): number {
  return value < least ? 0 : value;
}

function closeGaps(baffle: Design['baffle']): Design['baffle'] {
  return {
    ...baffle,
    sideClearance_m: orNone(baffle.sideClearance_m),
    endClearance_m: orNone(baffle.endClearance_m),
    leakGap_m: orNone(baffle.leakGap_m),
  };
}

function grilleOf(grille: Design['outlet'], blocked: number): GrilleInput {
  return { ...grille, loss: orNone(grille.loss), blocked };
}

function filterOf(inlet: Design['inlet']): FilterInput | null {
  const linear_PaSPerM = orNone(inlet.filterLinear_PaSPerM);
  const quadratic_PaS2PerM2 = orNone(inlet.filterQuadratic_PaS2PerM2);
  return inlet.filter && linear_PaSPerM + quadratic_PaS2PerM2 > 0
    ? { blocked: inlet.filterBlocked, linear_PaSPerM, quadratic_PaS2PerM2 }
    : null;
}

/** Nobody measures the point without flow: a row of points is taken to begin there. */
function extraOf(extra: Design['extras'][number]): ExtraLossInput {
  const first = extra.points[0];
  const atRest = { flow_m3PerS: 0, dp_Pa: 0 };
  const points = first === undefined || first.flow_m3PerS === 0 ? extra.points : [atRest, ...extra.points];
  return { ...extra, loss: orNone(extra.loss), points };
}
