import { type BankGeometry, bankGeometry } from '../../core/system/geometry.ts';
import type { Design } from '../../model/design.ts';
import { toCore } from '../../model/toCore.ts';
import { type FanLane, fanLanes } from './fanLanes.ts';

/** A room smaller than this is none: no saw and no eye sees it. */
export const unseen_m = 1e-6;
/** Steeper than this against the fan's axis a panel is no neck-down any more, and no bevel can be cut. */
const steepest_rad = (75 * Math.PI) / 180;

/** What panels are made from: the inside of the box, as the drawing has it. Heights are from the plenum floor. */
export interface BoxMeasures {
  readonly bank: BankGeometry;
  readonly wall_m: number;
  /** Inside of the bay, walls to walls and floor to top. */
  readonly length_m: number;
  readonly width_m: number;
  readonly height_m: number;
  readonly plenum_m: number;
  readonly baffleTop_m: number;
  /** Opening over the sinks, as large as the answer takes it; the collar is as wide and as long inside. */
  readonly outletLength_m: number;
  readonly outletWidth_m: number;
  /** Between the collar and the walls, on each side and at each end. */
  readonly sideRoom_m: number;
  readonly endRoom_m: number;
  readonly lanes: readonly FanLane[];
  readonly framesWidth_m: number;
  readonly framesHeight_m: number;
  /** Rectangle round all fan openings, where the neck-down begins. */
  readonly fanWidth_m: number;
  readonly fanHeight_m: number;
  readonly neck: NeckMeasures | null;
  /** Steepest slope of a neck-down that is too steep to be one, `null` else. */
  readonly tooSteep_rad: number | null;
}

/** Slopes are of one panel against the axis, positive where the fan's end is the wider one. */
export interface NeckMeasures {
  readonly length_m: number;
  readonly topSlope_rad: number;
  readonly sideSlope_rad: number;
  readonly topSlant_m: number;
  readonly sideSlant_m: number;
  /** How far the corner between a top and a side panel is from square. */
  readonly corner_rad: number;
}

export function boxMeasures(design: Design): BoxMeasures {
  const { plenum, baffle, box, sink } = design;
  const bank = bankGeometry(toCore(design));
  const lanes = fanLanes(design);
  const framesWidth_m = lanes.reduce((sum, { frame_m }) => sum + frame_m, 0);
  const left_m = Math.max(...lanes.map(({ across_m, opening_m }) => opening_m / 2 - across_m));
  const right_m = Math.max(...lanes.map(({ across_m, opening_m }) => opening_m / 2 + across_m));
  const fanWidth_m = 2 * Math.max(left_m, right_m);
  const fanHeight_m = Math.max(...lanes.map(({ opening_m }) => opening_m));
  const baffleTop_m = plenum.height_m + baffle.sheet_m;
  const outletLength_m = bank.row_m + 2 * bank.end_m;
  const outletWidth_m = sink.width_m + 2 * bank.side_m;
  const neck =
    plenum.neckLength_m > unseen_m
      ? neckMeasures(plenum.neckLength_m, fanWidth_m - box.width_m, fanHeight_m - plenum.height_m)
      : null;
  const steep_rad = neck ? Math.max(Math.abs(neck.topSlope_rad), Math.abs(neck.sideSlope_rad)) : 0;
  return {
    bank,
    wall_m: box.sheet_m,
    length_m: box.length_m,
    width_m: box.width_m,
    height_m: baffleTop_m + baffle.standOff_m + sink.length_m + box.headroom_m,
    plenum_m: plenum.height_m,
    baffleTop_m,
    outletLength_m,
    outletWidth_m,
    sideRoom_m: (box.width_m - outletWidth_m) / 2,
    endRoom_m: (box.length_m - outletLength_m) / 2,
    lanes,
    framesWidth_m,
    framesHeight_m: Math.max(...lanes.map(({ frame_m }) => frame_m)),
    fanWidth_m,
    fanHeight_m,
    neck: steep_rad <= steepest_rad ? neck : null,
    tooSteep_rad: steep_rad > steepest_rad ? steep_rad : null,
  };
}

function neckMeasures(length_m: number, narrows_m: number, lowers_m: number): NeckMeasures {
  const topSlope_rad = Math.atan(lowers_m / 2 / length_m);
  const sideSlope_rad = Math.atan(narrows_m / 2 / length_m);
  return {
    length_m,
    topSlope_rad,
    sideSlope_rad,
    topSlant_m: Math.hypot(length_m, lowers_m / 2),
    sideSlant_m: Math.hypot(length_m, narrows_m / 2),
    corner_rad: Math.asin(Math.sin(topSlope_rad) * Math.sin(sideSlope_rad)),
  };
}
