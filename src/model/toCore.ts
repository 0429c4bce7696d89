import { type Excitation, type ExtraLossInput, type SystemInput, unitFactors } from '../core/system/input.ts';
import type { Design } from './design.ts';

/** What the core is told of a design that passes the schema and `checkDesign`. */
export function toCore(design: Design): SystemInput {
  const { load, sink, bond, baffle, inlet, plenum, box, limits, parts } = design;
  return {
    room: design.room,
    load: {
      excitation: load.excitation,
      supply: supplyOf(load),
      supplyTolerance: load.supplyTolerance,
      duty: load.duty,
      atWorst: load.atWorst,
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
    fan: design.fan,
    inlet: {
      guard: inlet.guard,
      filter: inlet.filter
        ? { linear_PaSPerM: inlet.filterLinear_PaSPerM, quadratic_PaS2PerM2: inlet.filterQuadratic_PaS2PerM2 }
        : null,
    },
    plenum: { height_m: plenum.height_m, neckAngle_rad: plenum.neckAngle_rad, length_m: box.length_m },
    baffle: baffle.fitted ? baffle : null,
    box,
    outlet: design.outlet,
    extras: design.extras.map(fromOrigin),
    limits: {
      joint_K: limits.joint_K,
      sheet_K: box.softening_K,
      exhaust_K: limits.exhaust_K,
      touchable: limits.touchable,
      touch_K: limits.touch_K,
      spareFactor: limits.spareFactor,
    },
    factors: unitFactors,
  };
}

export type SupplyKind = 'volts' | 'amps' | null;

/** Which supply a way of loading reads. */
export const supplyKindOf: Readonly<Record<Excitation, SupplyKind>> = {
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

/** Nobody measures the point without flow: a row of points is taken to begin there. */
function fromOrigin(extra: Design['extras'][number]): ExtraLossInput {
  const first = extra.points[0];
  if (first === undefined || first.flow_m3PerS === 0) return extra;
  return { ...extra, points: [{ flow_m3PerS: 0, dp_Pa: 0 }, ...extra.points] };
}
