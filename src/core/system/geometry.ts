import type { FanInput, SystemInput } from './input.ts';

/** Lengths and areas that follow from the input alone; every room of the core that needs one takes it from here. */
export interface BankGeometry {
  readonly sinkCount: number;
  /** Whether sink s stands in the row, and which of its faces carry a plate. */
  readonly present: readonly boolean[];
  readonly plateBefore: readonly boolean[];
  readonly plateAfter: readonly boolean[];
  /** Clear gap between two fins; channels in one sink. */
  readonly finGap_m: number;
  readonly channels: number;
  /** x from face to face of sink s, and of resistor r with its bonds. */
  readonly sinkDepth_m: readonly number[];
  readonly stack_m: readonly number[];
  readonly row_m: number;
  /** Free opening of all fans side by side, of the plenum, of the bay round the bank. */
  readonly fanArea_m2: number;
  readonly plenumArea_m2: number;
  /** Room beside the row on one side, and beyond it at one end. */
  readonly side_m: number;
  readonly end_m: number;
  /** Height over which gap air is guided. */
  readonly collar_m: number;
  readonly outletArea_m2: number;
}

export function bankGeometry(input: SystemInput): BankGeometry {
  const { sink, positions, bond, secondFace, baffle, box, fan, plenum } = input;
  const n = positions.length;
  const present: boolean[] = [];
  const plateBefore: boolean[] = [];
  const plateAfter: boolean[] = [];
  const sinkDepth_m: number[] = [];
  let sinks_m = 0;
  for (let s = 0; s <= n; s++) {
    const here = (s > 0 || input.hasFirstSink) && (s < n || input.hasLastSink);
    const plates = Number(s > 0) + Number(s < n);
    const depth_m = here ? sink.finHeight_m + sink.plate_m * plates : 0;
    present.push(here);
    plateBefore.push(here && s > 0);
    plateAfter.push(here && s < n);
    sinkDepth_m.push(depth_m);
    sinks_m += depth_m;
  }
  const backing_m =
    secondFace.way === 'tabs'
      ? secondFace.tabThickness_m + secondFace.solder_m + bond.filament_m
      : secondFace.way === 'bonded'
        ? bond.filament_m
        : 0;
  const stack_m: number[] = [];
  let stacks_m = 0;
  for (const { part } of positions) {
    const thickness_m = part.coating_m + part.thickness_m + bond.filament_m + backing_m;
    stack_m.push(thickness_m);
    stacks_m += thickness_m;
  }
  const row_m = sinks_m + stacks_m;
  const side_m = baffle ? baffle.sideClearance_m : Math.max(0, (box.width_m - sink.width_m) / 2);
  const end_m = baffle ? baffle.endClearance_m : Math.max(0, (box.length_m - row_m) / 2);
  return {
    sinkCount: n + 1,
    present,
    plateBefore,
    plateAfter,
    finGap_m: (sink.width_m - sink.finCount * sink.finThickness_m) / (sink.finCount - 1),
    channels: sink.finCount - 1,
    sinkDepth_m,
    stack_m,
    row_m,
    fanArea_m2: fanOpenings_m2(fan),
    plenumArea_m2: plenum.height_m * box.width_m,
    side_m,
    end_m,
    collar_m: baffle ? Math.min(baffle.collar_m, sink.length_m) : sink.length_m,
    outletArea_m2: (row_m + 2 * end_m) * (sink.width_m + 2 * side_m),
  };
}

/** Openings that the air may choose among on its way in. */
function fanOpenings_m2(fan: FanInput): number {
  let squares_m2 = fan.sideBySide * fan.opening_m * fan.opening_m;
  for (const { place, opening_m } of fan.others) if (place === 'beside') squares_m2 += opening_m * opening_m;
  return (Math.PI / 4) * squares_m2;
}
