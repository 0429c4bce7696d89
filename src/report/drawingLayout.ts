import { type BankGeometry, bankGeometry } from '../core/system/geometry.ts';
import type { Design } from '../model/design.ts';
import { toCore } from '../model/toCore.ts';
import type { Box, DrawingShape } from './drawing.ts';
import { type FanPlaces, placeFans } from './drawingFans.ts';

/** Where the parts stand, in metres; u along the row from the fan's outer face, z up from the plenum floor. */
export interface Layout {
  readonly bank: BankGeometry;
  readonly fans: FanPlaces;
  readonly bayStart_m: number;
  readonly bayEnd_m: number;
  readonly rowStart_m: number;
  readonly baffleTop_m: number;
  readonly bankBottom_m: number;
  readonly bankTop_m: number;
  readonly top_m: number;
  /** Highest z of the section, where v is 0. */
  readonly zMax_m: number;
  readonly trunk_m: number;
}

export function layOut(design: Design): Layout {
  const { fan, plenum, box, baffle, sink } = design;
  const bank = bankGeometry(toCore(design));
  const fans = placeFans(design);
  const bayStart_m = fans.depth_m + plenum.neckLength_m;
  const baffleTop_m = plenum.height_m + baffle.sheet_m;
  const bankBottom_m = baffleTop_m + baffle.standOff_m;
  const bankTop_m = bankBottom_m + sink.length_m;
  const top_m = bankTop_m + box.headroom_m;
  return {
    bank,
    fans,
    bayStart_m,
    bayEnd_m: bayStart_m + box.length_m,
    rowStart_m: bayStart_m + (box.length_m - bank.row_m) / 2,
    baffleTop_m,
    bankBottom_m,
    bankTop_m,
    top_m,
    zMax_m: Math.max(top_m + box.sheet_m, ...fans.fans.map(({ frame_m }) => (plenum.height_m + frame_m) / 2)),
    trunk_m: 0.6 * Math.min(plenum.height_m, fan.opening_m),
  };
}

export function boundsOf(shapes: readonly DrawingShape[]): Box {
  const left = Math.min(...shapes.map((s) => s.box.u_m));
  const top = Math.min(...shapes.map((s) => s.box.v_m));
  const right = Math.max(...shapes.map((s) => s.box.u_m + s.box.width_m));
  const bottom = Math.max(...shapes.map((s) => s.box.v_m + s.box.height_m));
  return { u_m: left, v_m: top, width_m: right - left, height_m: bottom - top };
}
